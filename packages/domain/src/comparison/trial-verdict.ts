/** What recipe can be mixed up with: then nobody can say which of the two it was. */
export const NUISANCES = ['donor', 'tray', 'bench', 'day', 'team'] as const;
/** And what else can hide behind arms: another recipe, or the rest of it; another stand; another species. */
export type Nuisance = (typeof NUISANCES)[number] | 'recipe' | 'stand' | 'species';

/** Plants of one arm of a comparison that share all else that is known. A nuisance left out is not known. */
export type TrialRow = { readonly arm: string; readonly plants: number } & Partial<Readonly<Record<Nuisance, string>>>;

/** How next year's trial answers what this one can't. */
export type TrialAdvice =
  | 'each-donor-in-both' | 'several-trays-each' | 'both-on-each-bench' | 'both-on-each-day' | 'both-by-each-team'
  | 'one-recipe-for-both' | 'same-stands-in-both' | 'one-species' | 'stick-both';

export interface TrialVerdict {
  /** Whether a difference between the arms may be laid to the arms. */
  readonly mayCompare: boolean;
  /** What the arms are mixed up with, worst first. */
  readonly mixedUpWith: readonly Nuisance[];
  /** Nuisances that are told of fewer than nine plants in ten: they may hide anything. */
  readonly unknown: readonly Nuisance[];
  /** Compare within donor trees (most of the plants are of trees in both arms), or between them. */
  readonly compare: 'within-donors' | 'between-donors';
  readonly advice: readonly TrialAdvice[];
}

const ADVICE: Readonly<Record<Nuisance, TrialAdvice>> = {
  donor: 'each-donor-in-both', tray: 'several-trays-each', bench: 'both-on-each-bench', day: 'both-on-each-day', team: 'both-by-each-team',
  recipe: 'one-recipe-for-both', stand: 'same-stands-in-both', species: 'one-species',
};

/**
 * Levels of a nuisance that an arm needs, if none holds both arms: so many trees, trays and days even out. Working
 * rules. Recipes and species are chosen and not drawn, so no number of them evens out.
 */
const ENOUGH: Readonly<Record<Nuisance, number>> = { donor: 5, tray: 3, bench: 3, day: 3, team: 3, stand: 3, recipe: Infinity, species: Infinity };

/**
 * Can this comparison carry its question?
 *
 * Arms are mixed up with a nuisance when hardly a level of it (a tree, a tray) holds plants of two arms, and an arm
 * has too few levels for them to even out. One level for all harms nothing: then arms differ in something else.
 *
 * @param rows every plant that is compared, in groups
 * @param asked what to look for; leave out what the arms themselves are
 */
export function trialVerdict(rows: readonly TrialRow[], asked: readonly Nuisance[] = NUISANCES): TrialVerdict {
  const present = rows.filter(({ plants }) => plants > 0);
  const arms = new Set(present.map(({ arm }) => arm));
  // Asked in whole numbers, so that exactly nine in ten are told enough.
  const unknown = asked.filter((nuisance) => 10 * plantsOf(toldOf(present, nuisance)) < 9 * plantsOf(present));
  const known = asked.filter((nuisance) => !unknown.includes(nuisance));
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
  const told = toldOf(rows, nuisance);
  if (sharedPart(told, nuisance) >= 0.5) return false;
  const levels = groupedBy(told, ({ arm }) => arm);
  return [...levels.values()].some((own) => new Set(own.map((row) => row[nuisance])).size < ENOUGH[nuisance]);
}

/** Share of the plants, of which some are told, that stand in levels of the nuisance which hold more than one arm. */
function sharedPart(rows: readonly TrialRow[], nuisance: Nuisance): number {
  const told = toldOf(rows, nuisance);
  const shared = [...groupedBy(told, (row) => row[nuisance]).values()].filter((level) => new Set(level.map(({ arm }) => arm)).size > 1);
  return plantsOf(shared.flat()) / plantsOf(told);
}

const toldOf = (rows: readonly TrialRow[], nuisance: Nuisance): readonly TrialRow[] => rows.filter((row) => row[nuisance] !== undefined);

const plantsOf = (rows: readonly TrialRow[]): number => rows.reduce((sum, { plants }) => sum + plants, 0);

function groupedBy<T, K>(things: readonly T[], keyOf: (thing: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const thing of things) {
    const group = groups.get(keyOf(thing));
    if (group) group.push(thing);
    else groups.set(keyOf(thing), [thing]);
  }
  return groups;
}
