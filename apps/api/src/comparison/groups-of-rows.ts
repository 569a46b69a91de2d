import type { ComparedGroup } from '@sprigline/contract';
import { dayAfter, DomainError, type DonorOutcome, donorSpread, overdispersion, settledRate, wilsonInterval } from '@sprigline/domain';
import type { NamedDonor, NamedDonors } from '../reading/head.queries.ts';
import type { ComparedRow } from './comparison.queries.ts';

/** A group before its donor trees have names. */
export interface WorkedGroup {
  readonly key: string;
  readonly rows: readonly ComparedRow[];
  readonly rooted: number;
  readonly lost: number;
  readonly byDonor: ReturnType<typeof donorSpread>;
}

const sumOf = (rows: readonly ComparedRow[], name: 'cuttings' | 'rooted' | 'lost' | 'undecided'): number => rows.reduce((sum, row) => sum + row[name], 0);

/** Those with most cuttings decided first, the one that is not told last; second tries left out. */
export function groupsOf(rows: readonly ComparedRow[]): WorkedGroup[] {
  const groups = groupedBy(rows.filter(({ isSecondTry }) => !isSecondTry), ({ key }) => key ?? '');
  return [...groups]
    .map(([key, own]) => ({ key, rows: own, rooted: sumOf(own, 'rooted'), lost: sumOf(own, 'lost'), byDonor: donorSpread(outcomesOf(own)) }))
    .sort((a, b) => Number(a.key === '') - Number(b.key === '') || b.rooted + b.lost - (a.rooted + a.lost) || (a.key < b.key ? -1 : 1));
}

/** The best and the worst, where trees are too few for a range. */
export const donorsNamedIn = (groups: readonly WorkedGroup[]): string[] =>
  groups.flatMap(({ byDonor }) => (byDonor?.kind === 'best-and-worst' ? [byDonor.best.donorId, byDonor.worst.donorId] : []));

const nameOf = <R extends { readonly donorId: string }>(of: R, names: NamedDonors): R & NamedDonor =>
  ({ ...of, ...(names.get(of.donorId) ?? { donorId: of.donorId, treeId: of.donorId, label: '' }) });

/** Species with cuttings that wait. */
export const speciesWaiting = (groups: readonly WorkedGroup[]): string[] => [...new Set(groups.flatMap(({ rows }) => rows.filter(({ undecided }) => undecided > 0).map(({ species }) => species)))];

export function groupTold({ key, rows, rooted, lost, byDonor }: WorkedGroup, names: NamedDonors, verdictDays: ReadonlyMap<string, number>): ComparedGroup {
  const [cuttings, undecided] = [sumOf(rows, 'cuttings'), sumOf(rows, 'undecided')];
  const settled = rooted + lost > 0 || undecided > 0 ? settledRate({ goneOn: rooted, died: lost, unaccounted: 0, notRooted: 0, thrownOut: 0, givenOut: 0, restuck: 0, stillHere: undecided }) : undefined;
  const days = rows.flatMap(({ day }) => day ?? []).sort();
  return {
    key, name: rows[0]?.name ?? '', hormone: rows[0]?.hormone ?? null,
    firstStuckOn: days[0] ?? null, lastStuckOn: days.at(-1) ?? null,
    cuttings, rooted, lost, undecided, leftWithoutVerdict: Math.max(0, cuttings - rooted - lost - undecided),
    donors: distinct(rows, 'donor'), trays: distinct(rows, 'tray'), days: new Set(days).size,
    ofUnknownDonor: sumOf(rows.filter(({ donor }) => donor === null), 'cuttings'),
    share: settled?.rate ?? null, range: settled?.range ?? null, needsRange: settled?.needsRange ?? false, isRankable: settled?.isRankable ?? false,
    wilson: rooted + lost > 0 ? wilsonInterval(rooted, rooted + lost) : null,
    byDonor: byDonor ? (byDonor.kind === 'interval' ? byDonor : { ...byDonor, best: nameOf(byDonor.best, names), worst: nameOf(byDonor.worst, names) }) : null,
    donorsDiffer: spreadOf([...outcomesOf(rows).values()]),
    verdictOn: rows.filter((row) => row.undecided > 0).flatMap(({ day, species }) => (day === null ? [] : dayAfter(day, verdictDays.get(species) ?? 0))).sort().at(-1) ?? null,
  };
}

/** Of cuttings that are decided and whose donor tree is known. */
export function outcomesOf(rows: readonly ComparedRow[]): Map<string, DonorOutcome> {
  const known = groupedBy(rows.filter(({ donor }) => donor !== null), ({ donor }) => donor ?? '');
  return new Map([...known].map(([donor, own]) => [donor, { successes: sumOf(own, 'rooted'), plants: sumOf(own, 'rooted') + sumOf(own, 'lost') }]));
}

function spreadOf(outcomes: readonly DonorOutcome[]): ComparedGroup['donorsDiffer'] {
  try {
    const { factor, chance } = overdispersion(outcomes);
    return { factor, chance };
  } catch (error) {
    // One tree, or all cuttings did the same: how trees differ can't be told.
    if (error instanceof DomainError && ['survival/too-few-donors', 'comparison/nothing-to-compare'].includes(error.code)) return null;
    throw error;
  }
}

const distinct = (rows: readonly ComparedRow[], name: 'donor' | 'tray'): number => new Set(rows.flatMap((row) => row[name] ?? [])).size;

function groupedBy(rows: readonly ComparedRow[], keyOf: (row: ComparedRow) => string): Map<string, ComparedRow[]> {
  const groups = new Map<string, ComparedRow[]>();
  for (const row of rows) {
    const own = groups.get(keyOf(row));
    if (own) own.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return groups;
}
