/** What recipe can be mixed up with: then nobody can say which of the two it was. */
export const NUISANCES = ['donor', 'tray', 'bench', 'day', 'team'] as const;
export type Nuisance = (typeof NUISANCES)[number];

/** Plants of one arm of a comparison that share all else that is known. A nuisance left out is not known. */
export type TrialRow = { readonly arm: string; readonly plants: number } & Partial<Readonly<Record<Nuisance, string>>>;

/** How next year's trial answers what this one can't. */
export type TrialAdvice = 'each-donor-in-both' | 'several-trays-each' | 'both-on-each-bench' | 'both-on-each-day' | 'both-by-each-team' | 'stick-both';

export interface TrialVerdict {
  /** Whether a difference between the arms may be laid to the arms. */
  readonly mayCompare: boolean;
  /** What the arms are mixed up with, worst first. */
  readonly mixedUpWith: readonly Nuisance[];
  /** Nuisances that nobody wrote down: they may hide anything. */
  readonly unknown: readonly Nuisance[];
  /** Compare within donor trees (most of the plants are of trees in both arms), or between them. */
  readonly compare: 'within-donors' | 'between-donors';
  readonly advice: readonly TrialAdvice[];
}

const ADVICE: Readonly<Record<Nuisance, TrialAdvice>> = {
  donor: 'each-donor-in-both', tray: 'several-trays-each', bench: 'both-on-each-bench', day: 'both-on-each-day', team: 'both-by-each-team',
};

/** Levels of a nuisance that an arm needs, if none holds both arms: so many trees, trays and days even out. Working rules. */
const ENOUGH: Readonly<Record<Nuisance, number>> = { donor: 5, tray: 3, bench: 3, day: 3, team: 3 };

/**
 * Can this comparison carry its question?
 *
 * Arms are mixed up with a nuisance when hardly a level of it (a tree, a tray) holds plants of two arms, and an arm
 * has too few levels for them to even out. One level for all harms nothing: then arms differ in something else.
 *
 * @param rows every plant that is compared, in groups
 */
export function trialVerdict(rows: readonly TrialRow[]): TrialVerdict {
  const present = rows.filter(({ plants }) => plants > 0);
  const arms = new Set(present.map(({ arm }) => arm));
  const unknown = NUISANCES.filter((nuisance) => present.some((row) => row[nuisance] === undefined));
  const known = NUISANCES.filter((nuisance) => !unknown.includes(nuisance));
  const mixedUpWith = arms.size < 2 ? [] : known.filter((nuisance) => isMixedUp(present, nuisance)).sort((a, b) => sharedPart(present, a) - sharedPart(present, b));
  return {
    mayCompare: arms.size >= 2 && mixedUpWith.length === 0,
    mixedUpWith,
    unknown,
    compare: known.includes('donor') && sharedPart(present, 'donor') >= 0.5 ? 'within-donors' : 'between-donors',
    advice: arms.size < 2 ? ['stick-both'] : mixedUpWith.map((nuisance) => ADVICE[nuisance]),
  };
}

function isMixedUp(rows: readonly TrialRow[], nuisance: Nuisance): boolean {
  if (sharedPart(rows, nuisance) >= 0.5) return false;
  const levels = groupedBy(rows, ({ arm }) => arm);
  return [...levels.values()].some((own) => new Set(own.map((row) => row[nuisance])).size < ENOUGH[nuisance]);
}

/** Share of the plants that stand in levels of the nuisance which hold more than one arm. */
function sharedPart(rows: readonly TrialRow[], nuisance: Nuisance): number {
  const sum = (some: readonly TrialRow[]): number => some.reduce((all, { plants }) => all + plants, 0);
  const shared = [...groupedBy(rows, (row) => row[nuisance]).values()].filter((level) => new Set(level.map(({ arm }) => arm)).size > 1);
  return sum(rows) === 0 ? 0 : sum(shared.flat()) / sum(rows);
}

function groupedBy<T, K>(things: readonly T[], keyOf: (thing: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const thing of things) groups.set(keyOf(thing), [...(groups.get(keyOf(thing)) ?? []), thing]);
  return groups;
}
