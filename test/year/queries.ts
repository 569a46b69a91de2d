import { readFileSync } from 'node:fs';
import type { Route } from '../support/routes.ts';

interface Schema {
  readonly enum?: readonly string[];
  readonly $ref?: string;
}

interface Parameter {
  readonly name: string;
  readonly in: string;
  readonly schema: Schema;
}

interface Described {
  readonly paths: Readonly<Record<string, { readonly get?: { readonly parameters?: readonly Parameter[] } }>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
}

const { paths, components } = JSON.parse(readFileSync(new URL('../../apps/api/openapi.json', import.meta.url), 'utf8')) as Described;

/** What was told for a parameter, or, where it takes only some words and that is none of them, the first of those. */
function valueOf({ enum: own, $ref }: Schema, told: string | undefined): string | undefined {
  const words = own ?? components.schemas[$ref?.split('/').at(-1) ?? '']?.enum;
  return words && !words.includes(told ?? '') ? words[0] : told;
}

/** A place to go on from is told by a list alone. */
const LEFT_OUT = new Set(['after']);

/** Routes that answer nothing unless they are told what about. */
const NEEDED: Readonly<Record<string, readonly string[]>> = {
  'trace': ['batchId'], 'trace.csv': ['batchId'], 'trips/last-cuts': ['standId', 'on'], 'reports/landowner': ['standId'], 'reports/landowner.csv': ['standId'],
  'labels': ['of', 'placeId'], 'readings/comparison/layout': ['first', 'second'], 'readings/comparison/layout.csv': ['first', 'second'],
};

const lastPart = (path: string): string => path.split('/').slice(3).join('/');

/** Which parameters the API says that a route takes. */
export function parametersOf({ path }: Pick<Route, 'path'>): readonly Parameter[] {
  const described = path.replaceAll(/:(\w+)/g, '{$1}');
  const { parameters = [] } = (paths[described] ?? paths[`/api/v1${described}`])?.get ?? {};
  return parameters.filter(({ name, in: where }) => where === 'query' && !LEFT_OUT.has(name));
}

/**
 * What may follow the path: nothing, each parameter by itself and beside what the route cannot do without, and all at once.
 *
 * @param known by `?` and the name of a parameter, or by the path and both, what to put there
 */
export function queriesOf(route: Route, known: Readonly<Record<string, string>>): readonly string[] {
  const own = lastPart(route.path);
  const put = new Map(parametersOf(route).map(({ name, schema }) => {
    const value = valueOf(schema, known[`${own}?${name}`] ?? known[`?${name}`]);
    if (value === undefined) throw new Error(`nobody told what to put for ${name} of ${route.path}`);
    return [name, `${name}=${encodeURIComponent(value)}`] as const;
  }));
  const needed = NEEDED[own] ?? [];
  const sets = [[], needed, ...[...put.keys()].flatMap((name) => [[name], [...new Set([...needed, name])]]), [...put.keys()]];
  return [...new Set(sets.map((names) => (names.length > 0 ? `?${names.map((name) => put.get(name)).join('&')}` : '')))];
}
