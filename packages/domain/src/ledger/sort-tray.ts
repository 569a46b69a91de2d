import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/** One tray taken apart on the bench: where each of its plants went. Whole numbers; what was not told is none. */
export interface Sorting {
  /** Plants that the books hold before. */
  readonly inBooks: number;
  readonly lifted: number;
  readonly potted: number;
  /** Put back into the tray. */
  readonly back: number;
  /** Of those put back: how many have roots, and how many have callus and no root. Left out: not looked at. */
  readonly backRooted?: number | undefined;
  readonly backCallused?: number | undefined;
  readonly dead: number;
  readonly thrownOut: number;
}

export interface SortingSum {
  /** All that was told. */
  readonly told: number;
  /** In the books and not told: they may lie under the bench. */
  readonly unaccounted: number;
  /** Told and not in the books. */
  readonly over: number;
}

/**
 * What a sorted tray adds up to, as it stands on screen while the numbers are typed.
 *
 * @throws DomainError `ledger/not-a-count` for a number that counts no plants
 */
export function sortingSum({ inBooks, lifted, potted, back, dead, thrownOut }: Sorting): SortingSum {
  const parts = [lifted, potted, back, dead, thrownOut];
  if (![inBooks, ...parts].every(isCount)) throw new DomainError('ledger/not-a-count', 'a tray is sorted into whole numbers of plants');

  const told = parts.reduce((sum, n) => sum + n, 0);
  return { told, unaccounted: Math.max(0, inBooks - told), over: Math.max(0, told - inBooks) };
}

/** One entry that the sorting of a tray becomes, without the ids and places that only its writer knows. */
export type SortingAct =
  | { readonly kind: 'found'; readonly n: number }
  | { readonly kind: 'counted'; readonly alive: number; readonly rooted?: number | undefined; readonly callused?: number | undefined }
  | { readonly kind: 'thrownOut'; readonly n: number }
  | { readonly kind: 'lifted' | 'potted'; readonly n: number; readonly leavesNone: boolean };

/**
 * The entries that one sorting becomes, in the order in which they hold.
 *
 * The living are counted before anything leaves, and with all that is about to
 * leave: within a day a count comes before departures, so that the books close
 * also where nobody wrote the time. What is missing falls to that count. Whoever
 * leaves nothing in the tray says so with the last act, which calls the tray.
 *
 * @throws DomainError `ledger/not-a-count`
 */
export function sortingActs(sorting: Sorting): SortingAct[] {
  const { over } = sortingSum(sorting);
  const { lifted, potted, back, thrownOut, backRooted, backCallused } = sorting;
  const on = lifted + potted;
  const rooted = backRooted === undefined && back > 0 ? undefined : on + (backRooted ?? 0);
  const acts: SortingAct[] = [
    { kind: 'found', n: over },
    { kind: 'counted', alive: on + back + thrownOut, rooted, callused: backCallused },
    { kind: 'thrownOut', n: thrownOut },
    { kind: 'lifted', n: lifted, leavesNone: back === 0 && potted === 0 },
    { kind: 'potted', n: potted, leavesNone: back === 0 },
  ];
  return acts.filter((act) => act.kind === 'counted' || act.n > 0);
}
