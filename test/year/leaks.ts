import type { TestApi } from '../support/api.ts';
import type { Member } from '../support/people.ts';
import { nameOf, routesOf } from '../support/routes.ts';
import { exactPlaceOf } from './beginning.ts';

/** How an exact place might stand in an answer: its digits, to five decimals and cut or rounded to four, and the way there. */
export function tracesOfPlaces(trees: number): readonly string[] {
  const digits = Array.from({ length: trees }, (_, at) => Object.values(exactPlaceOf(at)).map((degrees) => Math.abs(degrees))).flat();
  return [...digits.flatMap((degrees) => [degrees.toFixed(6).slice(0, -1), degrees.toFixed(4)]), 'leaning post', 'shooters'];
}

/** @returns for each text that holds a trace, its beginning and the trace */
export const leaksIn = (texts: readonly string[], traces: readonly string[]): string[] =>
  texts.flatMap((text) => traces.filter((trace) => text.includes(trace)).map((trace) => `${trace} in ${text.slice(0, 120)}`));

/**
 * Asks every route that only reads, with every id that it might be about, and answers all that came back.
 *
 * @param ids of one thing of each kind
 */
export async function askEverything(api: TestApi, who: Member, ids: readonly string[]): Promise<{ readonly texts: string[]; readonly answered: ReadonlySet<string> }> {
  const texts: string[] = [];
  const answered = new Set<string>();
  for (const route of routesOf(api).filter(({ method }) => method === 'GET')) {
    const path = `/api/v1${route.path.replace(':programme', 'harrowdale')}`;
    for (const id of path.includes(':') ? ids : ['']) {
      const answer = await api.app.inject({ url: path.replaceAll(/:\w+/g, id), headers: who.headers });
      texts.push(`${nameOf(route)} ${id}\n${JSON.stringify(answer.headers)}\n${answer.body}`);
      if (answer.statusCode === 200) answered.add(nameOf(route));
    }
  }
  return { texts, answered };
}
