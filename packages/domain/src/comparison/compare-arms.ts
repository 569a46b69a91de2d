import { normalQuantile } from '../distribution/normal.ts';
import { DomainError } from '../errors.ts';
import { newcombeDifference, type ShareDifference } from '../proportion/newcombe-difference.ts';
import type { DonorOutcome } from '../survival/donor-ratio-interval.ts';
import { commonDifference } from './common-difference.ts';
import { donorDifference } from './donor-difference.ts';
import { fisherExact } from './fisher-exact.ts';
import { logisticRegression, type LogisticRow, type LogisticTerm } from './logistic-regression.ts';
import { mantelHaenszel } from './mantel-haenszel.ts';
import { type Nuisance, NUISANCES, trialVerdict, type TrialVerdict } from './trial-verdict.ts';
import { tells, type TwoByTwo } from './two-by-two.ts';

/** Cuttings of one arm that share all else that is known, and what became of them. Whole numbers. */
export interface ArmRow extends Partial<Readonly<Record<Nuisance, string>>> {
  readonly rooted: number;
  readonly lost: number;
  /** Cuttings that wait for their verdict. */
  readonly undecided: number;
  /** The level of something else that is to be allowed for, such as the season. */
  readonly also?: string;
}

/** How two arms were compared. */
export type ComparedBy = 'one-tree' | 'within-trees' | 'between-trees' | 'allowing-for';

export interface ArmDifference {
  readonly by: ComparedBy;
  /** How many more of a hundred in the first arm, as a share of one. */
  readonly difference: ShareDifference;
  /** What its limits take for tried. */
  readonly limitsBy: 'plants' | 'donors';
  /** Odds in the first arm over those in the second. Infinite or 0 where one side is empty; missing where no end was found. */
  readonly odds?: { readonly ratio: number; readonly lower?: number; readonly upper?: number };
  /** Chance of so large a difference or a larger one, if there were none. Missing where the odds are. */
  readonly chance?: number;
  /** Donor trees that told something. */
  readonly donors: number;
}

export type ArmsCompared =
  | { readonly state: 'too-early' | 'mixed-up' | 'all-alike' | 'not-told-apart'; readonly verdict: TrialVerdict }
  | ({ readonly state: 'compared'; readonly verdict: TrialVerdict } & ArmDifference);

/**
 * Two arms of a trial, compared in the way that their layout allows; or the reason why they can't be.
 *
 * Within donor trees where most cuttings are of trees in both arms (Cochran-Mantel-Haenszel; Fisher's exact test for a
 * single tree); else between trees (logistic regression, errors by tree). Where something is to be allowed for, by
 * regression too. Under half decided nothing is compared: the slow are not like the quick.
 *
 * @param asked what the arms may be mixed up with
 * @param confidence of the limits, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `survival/not-a-level`
 */
export function compareArms(first: readonly ArmRow[], second: readonly ArmRow[], asked: readonly Nuisance[] = NUISANCES, confidence = 0.95): ArmsCompared {
  const isEarly = !isHalfDecided(first) || !isHalfDecided(second);
  const plants = isEarly ? (row: ArmRow) => settledOf(row) + row.undecided : settledOf;
  const verdict = trialVerdict([...first.map((row) => ({ ...row, arm: 'first', plants: plants(row) })), ...second.map((row) => ({ ...row, arm: 'second', plants: plants(row) }))], asked);
  if (isEarly) return { state: 'too-early', verdict };
  if (!verdict.mayCompare || verdict.unknown.includes('donor')) return { state: 'mixed-up', verdict };
  const [one, two] = [withTree(first), withTree(second)];
  if (!tells({ first: endsOf(one), second: endsOf(two) })) return { state: 'all-alike', verdict };
  const isAllowing = [...one, ...two].some(({ also }) => also !== undefined);
  const found = isAllowing ? allowingFor(one, two, confidence) : verdict.compare === 'within-donors' ? withinTrees(one, two, confidence) : betweenTrees(one, two, confidence);
  if (!found) return { state: isAllowing ? 'not-told-apart' : 'all-alike', verdict };
  return { state: 'compared', verdict, ...found };
}

function isHalfDecided(rows: readonly ArmRow[]): boolean {
  const settled = sumOf(rows, settledOf);
  return settled > 0 && settled >= sumOf(rows, ({ undecided }) => undecided);
}

function withinTrees(first: readonly TreeRow[], second: readonly TreeRow[], confidence: number): ArmDifference | undefined {
  const [one, two] = [byTree(first), byTree(second)];
  const strata = [...one].flatMap(([donor, rows]): TwoByTwo[] => (two.has(donor) ? [{ first: endsOf(rows), second: endsOf(two.get(donor)!) }] : []));
  const [only, ...more] = strata.filter(tells);
  if (!only) return undefined;
  if (more.length === 0) {
    const { oddsRatio: ratio, lower, upper, chance } = fisherExact(only, confidence);
    const seen = ({ yes, no }: TwoByTwo['first']) => ({ successes: yes, plants: yes + no });
    return { by: 'one-tree', difference: newcombeDifference(seen(only.first), seen(only.second), normalQuantile((1 + confidence) / 2)), limitsBy: 'plants', odds: { ratio, lower, upper }, chance, donors: 1 };
  }
  const { oddsRatio: ratio, lower, upper, chance, tellingStrata } = mantelHaenszel(strata, { confidence });
  const { by, difference, lower: least, upper: most } = commonDifference(strata, confidence);
  return { by: 'within-trees', difference: { difference, lower: least, upper: most }, limitsBy: by === 'strata' ? 'donors' : 'plants', odds: { ratio, ...(lower !== undefined && upper !== undefined && { lower, upper }) }, chance, donors: tellingStrata };
}

function betweenTrees(first: readonly TreeRow[], second: readonly TreeRow[], confidence: number): ArmDifference {
  const [one, two] = [outcomesOf(first), outcomesOf(second)];
  const term = regressed(first, second, confidence);
  const byDonor = unlessRefused(() => donorDifference(one, two, confidence));
  const difference = byDonor ?? newcombeDifference(added(one), added(two), normalQuantile((1 + confidence) / 2));
  return { by: 'between-trees', difference, limitsBy: byDonor ? 'donors' : 'plants', donors: one.length + two.length, ...(term && told(term)) };
}

/** The difference is what the odds make of the second arm's share. */
function allowingFor(first: readonly TreeRow[], second: readonly TreeRow[], confidence: number): ArmDifference | undefined {
  const term = regressed(first, second, confidence);
  if (!term) return undefined;
  const { successes, plants } = added(outcomesOf(second));
  const share = successes / plants;
  // Where all or none did it there was no term; a limit of the odds may be infinite, or nothing.
  const more = (odds: number): number => 1 / (1 + (1 - share) / (share * odds)) - share;
  const difference = { difference: more(term.oddsRatio), lower: more(term.lower), upper: more(term.upper) };
  return { by: 'allowing-for', difference, limitsBy: 'donors', donors: new Set([...first, ...second].map(({ donor }) => donor)).size, ...told(term) };
}

const told = ({ oddsRatio: ratio, lower, upper, chance }: LogisticTerm): Pick<ArmDifference, 'odds' | 'chance'> => ({ odds: { ratio, lower, upper }, chance });

/**
 * The term of the arm, by donor trees or by trays, whichever is the less sure: cuttings of either fare together.
 * Nothing where its odds have no end, or follow from what is allowed for.
 */
function regressed(first: readonly TreeRow[], second: readonly TreeRow[], confidence: number): LogisticTerm | undefined {
  const [, ...levels] = new Set([...first, ...second].map(({ also }) => also));
  const termsOf = ({ also }: TreeRow, at: number): number[] => [1 - at, ...levels.map((level) => (also === level ? 1 : 0))];
  const rowsBy = (clusterOf: (row: TreeRow) => string): LogisticRow[] => [first, second].flatMap((arm, at) =>
    arm.filter((row) => settledOf(row) > 0).map((row) => ({ terms: termsOf(row, at), successes: row.rooted, plants: settledOf(row), cluster: clusterOf(row) })));
  const byDonor = unlessRefused(() => logisticRegression(rowsBy(({ donor }) => donor), confidence).terms[1]);
  const byTray = [...first, ...second].every(({ tray }) => tray !== undefined) ? unlessRefused(() => logisticRegression(rowsBy(({ tray }) => tray ?? ''), confidence).terms[1]) : undefined;
  return byDonor && byTray && byTray.upper / byTray.lower > byDonor.upper / byDonor.lower ? byTray : byDonor;
}

/** Refusals that mean: no such figure can be told here. */
const NO_ANSWER = new Set(['comparison/separated', 'comparison/not-told-apart', 'comparison/too-few-clusters', 'survival/too-few-donors', 'survival/donors-all-alike']);

function unlessRefused<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof DomainError && NO_ANSWER.has(error.code)) return undefined;
    throw error;
  }
}

type TreeRow = ArmRow & { readonly donor: string };

/** Cuttings of which the tree is not known tell nothing in a comparison by trees; they are one in ten at most. */
const withTree = (rows: readonly ArmRow[]): TreeRow[] => rows.filter((row): row is TreeRow => row.donor !== undefined);

function byTree(rows: readonly TreeRow[]): Map<string, TreeRow[]> {
  const trees = new Map<string, TreeRow[]>();
  for (const row of rows) {
    const own = trees.get(row.donor);
    if (own) own.push(row);
    else trees.set(row.donor, [row]);
  }
  return trees;
}

const outcomesOf = (rows: readonly TreeRow[]): DonorOutcome[] =>
  [...byTree(rows).values()].map((own) => ({ successes: sumOf(own, (row) => row.rooted), plants: sumOf(own, settledOf) })).filter(({ plants }) => plants > 0);

const added = (outcomes: readonly DonorOutcome[]): DonorOutcome => ({ successes: sumOf(outcomes, (one) => one.successes), plants: sumOf(outcomes, (one) => one.plants) });

const endsOf = (rows: readonly ArmRow[]): TwoByTwo['first'] => ({ yes: sumOf(rows, (row) => row.rooted), no: sumOf(rows, (row) => row.lost) });

function settledOf({ rooted, lost }: ArmRow): number {
  return rooted + lost;
}

const sumOf = <T>(things: readonly T[], of: (thing: T) => number): number => things.reduce((sum, thing) => sum + of(thing), 0);
