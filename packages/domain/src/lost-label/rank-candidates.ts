import type { Stage } from '../ledger/entry.ts';

export type Foliage = 'juvenile' | 'changing' | 'adult';

/** What can be seen of a plant that lost its label. What nobody can tell is left out. */
export interface LostPlant {
  readonly stage?: Stage | undefined;
  readonly taxonId?: string | undefined;
  /** Row of the tray it stood in, counted from the label. */
  readonly row?: number | undefined;
  readonly foliage?: Foliage | undefined;
  /** The row itself lost its label, and its plants stand in it as they were stuck; else they are loose, and may have been set into any row. */
  readonly isWholeRow?: boolean | undefined;
}

/** A batch that stands, or stood last, where the plant was found. */
export interface Candidate {
  readonly id: string;
  readonly label: string | null;
  readonly stage: Stage;
  readonly taxonId: string | null;
  /** Such as "3" or "3-5". */
  readonly rows: string | null;
  /** As it was when the cuttings were taken. */
  readonly foliage: Foliage | null;
  /** Plants that the books still have there; at least 0. */
  readonly balance: number;
  /** Plants that counts could not find: unaccounted for, and trees not found. At least 0. */
  readonly missing: number;
  readonly lastSeenOn: string | null;
}

/** Why a batch stands where it stands on the list: what speaks for it, and what speaks against it. */
export type Sign = 'missing' | 'row' | 'otherRow' | 'foliage' | 'otherFoliage';

/**
 * Of which batch a plant without a label may be, the likeliest first.
 *
 * A batch at another stage or of another species is none of them: both can be seen. Those that are short of plants come first,
 * since a label that is lost leaves a gap in some count; of these the ones that still stand there, before the ones whose last plants
 * are missing. Then those against which less speaks: a plant may have been set back into the wrong row, and foliage changes with
 * the years, so neither rules a batch out. Then the larger gap, then the batch that was not seen for longest, then its label.
 *
 * Of a row that lost its label, what was stuck into that row comes before all this: nobody carried it.
 *
 * An order of search and no chance: it comes from what is said here and from no data, so it carries no figure.
 *
 * @param plant what was seen
 * @param candidates those that stand or stood where it was found, in any order
 */
export function rankCandidates<C extends Candidate>(plant: LostPlant, candidates: readonly C[]): { readonly candidate: C; readonly signs: readonly Sign[] }[] {
  return candidates
    .filter(({ stage, taxonId }) => (plant.stage === undefined || stage === plant.stage) && (plant.taxonId === undefined || taxonId === null || taxonId === plant.taxonId))
    .map((candidate) => ({ candidate, signs: signsOf(plant, candidate) }))
    .sort((a, b) => order(rankOf(plant, a), rankOf(plant, b)));
}

function signsOf({ row, foliage }: LostPlant, candidate: Candidate): Sign[] {
  const inRow = row === undefined || candidate.rows === null ? undefined : holdsRow(candidate.rows, row);
  const looksSo = foliage === undefined || candidate.foliage === null ? undefined : candidate.foliage === foliage;
  return [
    ...(candidate.missing > 0 ? ['missing' as const] : []),
    ...(inRow === undefined ? [] : [inRow ? ('row' as const) : ('otherRow' as const)]),
    ...(looksSo === undefined ? [] : [looksSo ? ('foliage' as const) : ('otherFoliage' as const)]),
  ];
}

function holdsRow(rows: string, row: number): boolean {
  const [from = 0, to = from] = rows.split('-').map(Number);
  return row >= Math.min(from, to) && row <= Math.max(from, to);
}

/** Compared from left to right, the smaller first. */
function rankOf({ isWholeRow = false }: LostPlant, { candidate, signs }: { candidate: Candidate; signs: readonly Sign[] }): readonly (number | string)[] {
  const against = signs.filter((sign) => sign === 'otherRow' || sign === 'otherFoliage').length;
  const speaking = signs.filter((sign) => sign === 'row' || sign === 'foliage').length;
  const gap = candidate.missing === 0 ? 2 : candidate.balance > 0 ? 0 : 1;
  const elsewhere = isWholeRow && !signs.includes('row') ? 1 : 0;
  return [elsewhere, gap, against, -speaking, -candidate.missing, candidate.lastSeenOn ?? '', candidate.label ?? '', candidate.id];
}

function order(one: readonly (number | string)[], other: readonly (number | string)[]): number {
  const at = one.findIndex((value, place) => value !== other[place]);
  if (at === -1) return 0;
  return (one[at] ?? 0) < (other[at] ?? 0) ? -1 : 1;
}
