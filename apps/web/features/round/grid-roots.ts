import type { Numbers } from './answer.ts';
import type { Celled, Extras, Mark, Marks } from './grid-cells.ts';
import type { Look, Stop } from './stop.ts';

/** What a tug or a lift tells of one living cutting. Callus is no root. */
export const ROOTS = ['rooted', 'callused', 'unrooted'] as const;
export type RootMark = (typeof ROOTS)[number];

export const isRoot = (mark: Mark | undefined): mark is RootMark => ROOTS.includes(mark as RootMark);

/** Only cuttings are asked for roots, and only whoever tugs or lifts them can tell. */
export const asksRoots = ({ stage }: Pick<Stop, 'stage'>, look: Look): boolean => stage === 'cutting' && look !== 'look';

/** A tug tells roots from none; callus is seen by lifting. */
export const rootKeys = (look: Look): readonly RootMark[] => (look === 'look' ? [] : look === 'tug' ? ['rooted', 'unrooted'] : ROOTS);

/**
 * How many have roots, once that was told of every living plant: of some alone it would say of the others that they have none.
 *
 * @param marks of the living ones
 */
export function rootsTold(marks: readonly RootMark[], alive: number, look: Look): Numbers {
  if (alive === 0 || marks.length < alive) return {};
  const n = (mark: RootMark): number => marks.filter((one) => one === mark).length;
  return { rooted: n('rooted'), ...(look === 'lifted' ? { callused: n('callused') } : {}) };
}

/** Cells of cuttings without any mark: of these nobody has said yet whether they have roots. */
export const silentCells = (celled: readonly Celled[], marks: Marks, extras: Extras, look: Look): string[] =>
  celled.filter(({ stop }) => asksRoots(stop, look)).flatMap(({ stop: { batchId }, n }) =>
    Array.from({ length: n + (extras[batchId] ?? 0) }, (_, nth) => `${batchId}/${nth}`).filter((key) => marks[key] === undefined));

/** Said by one tap of all that were not tapped. */
export const withRest = (marks: Marks, silent: readonly string[]): Marks => ({ ...marks, ...Object.fromEntries(silent.map((key) => [key, 'unrooted' as const])) });

/** Marks for what was told of a batch; which plants those were nobody said. @param keys of the living ones */
export function rootsFrom({ rooted, callused = 0 }: Numbers, keys: readonly string[]): Marks {
  if (rooted === undefined) return {};
  return Object.fromEntries(keys.map((key, nth) => [key, nth < rooted ? 'rooted' : nth < rooted + callused ? 'callused' : 'unrooted'] as const));
}
