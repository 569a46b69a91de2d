import type { TestApi } from '../support/api.ts';
import { nameOf, type Route, routesOf } from '../support/routes.ts';
import { exactPlaceOf } from './beginning.ts';
import { parametersOf, queriesOf } from './queries.ts';

/** How an exact place might stand in an answer: its digits, to five decimals and cut or rounded to four, and the way there. */
export function tracesOfPlaces(trees: number): readonly string[] {
  const digits = Array.from({ length: trees }, (_, at) => Object.values(exactPlaceOf(at)).map((degrees) => Math.abs(degrees))).flat();
  return [...digits.flatMap((degrees) => [degrees.toFixed(6).slice(0, -1), degrees.toFixed(4)]), 'leaning post', 'shooters'];
}

/** @returns for each text that holds a trace, its beginning and the trace */
export const leaksIn = (texts: readonly string[], traces: readonly string[]): string[] =>
  texts.flatMap((text) => traces.filter((trace) => text.includes(trace)).map((trace) => `${trace} in ${text.slice(0, 120)}`));

export interface Crawled {
  readonly texts: readonly string[];
  /** Routes that answered with what was asked for, and each with every parameter that was in such a question: `GET /… ?stage`. */
  readonly answered: ReadonlySet<string>;
  /** The same of those that wanted the grant *see exact places*. */
  readonly wantedGrant: ReadonlySet<string>;
  /** How many questions were answered with what was asked for. */
  readonly answers: number;
}

/**
 * Asks every route that only reads, with every parameter that it takes.
 *
 * @param known by the name of a parameter, or by the noun before an id, what to put there
 */
export async function askEverything(api: TestApi, headers: Record<string, string>, known: Readonly<Record<string, string>>): Promise<Crawled> {
  const texts: string[] = [];
  const [answered, wantedGrant] = [new Set<string>(), new Set<string>()];
  let answers = 0;
  for (const route of routesOf(api).filter(({ method }) => method === 'GET')) {
    for (const query of queriesOf(route, known)) {
      const { statusCode, headers: told, body } = await api.app.inject({ url: `${pathOf(route, known)}${query}`, headers });
      texts.push(`${nameOf(route)}${query}\n${JSON.stringify(told)}\n${body}`);
      const wantsGrant = statusCode === 403 && body.includes('/problems/place/grant-needed');
      if (statusCode === 200) answers += 1;
      if (statusCode === 200) namesIn(route, query).forEach((name) => answered.add(name));
      else if (wantsGrant) namesIn(route, query).forEach((name) => wantedGrant.add(name));
      // Who has no business there at all is not let in by other parameters.
      if (statusCode === 401 || (statusCode === 403 && !wantsGrant)) break;
    }
  }
  return { texts, answered, wantedGrant, answers };
}

const namesIn = (route: Route, query: string): string[] => [nameOf(route), ...[...new URLSearchParams(query).keys()].map((name) => `${nameOf(route)} ?${name}`)];

/** Routes that somebody of that role may read, by themselves and with each parameter. */
export const openTo = (api: TestApi, role: string): string[] =>
  routesOf(api)
    .filter(({ method, rule }) => method === 'GET' && rule && 'roles' in rule && rule.roles.some((one) => one === role))
    .flatMap((route) => [nameOf(route), ...parametersOf(route).map(({ name }) => `${nameOf(route)} ?${name}`)]);

function pathOf({ path }: Route, known: Readonly<Record<string, string>>): string {
  const parts = path.split('/');
  return `/api/v1${parts.map((part, at) => (part === ':programme' ? 'harrowdale' : part.startsWith(':') ? (known[parts[at - 1] ?? ''] ?? 'nothing') : part)).join('/')}`;
}
