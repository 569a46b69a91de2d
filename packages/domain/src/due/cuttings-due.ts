import { dayAfter } from './day-after.ts';
import type { Due } from './due.ts';
import type { DaysOf, WaitingDay } from './waiting-days.ts';

/** A batch of cuttings as the books have it now. */
export interface CuttingsNow {
  /** The day they were stuck; where nobody knows it, the day the batch was opened. */
  readonly since: string;
  /** Plants alive. */
  readonly plants: number;
  /** Undefined: nobody has told. */
  readonly rootedNow: number | undefined;
  /** Rooted plants ever seen or gone on. */
  readonly rootedEver: number;
  /** The last look by a tug or lifted, at all of them or at a sample. */
  readonly strongLookOn: string | undefined;
  readonly calledOn: string | undefined;
  readonly held: boolean;
}

/** A check so many days before its day is that check: people come when they can. */
export const FIRST_CHECK_MAY_BE_EARLY_BY = 7;

/**
 * What is due on a batch of cuttings. Nothing is stored: the entry that does it closes it.
 *
 * - First check: closed by roots, whoever saw them and how; and by a tug or a lift from a week before its day on.
 *   An earlier one is not it: no roots can be there yet.
 * - Verdict: closed when the tray is called or empty, or when all that is left is known to be rooted.
 * - Moving on: open while rooted plants are known to be there. Held plants stay where they are.
 */
export function cuttingsDue(batch: CuttingsNow, days: DaysOf<WaitingDay>): Due[] {
  const { since, plants, rootedNow, rootedEver, strongLookOn, calledOn, held } = batch;
  if (plants === 0) return [];

  const due: Due[] = [];
  const checkOn = dayAfter(since, days.firstCheck.days);
  const isChecked = rootedEver > 0 || (strongLookOn !== undefined && strongLookOn >= dayAfter(checkOn, -FIRST_CHECK_MAY_BE_EARLY_BY));
  if (!isChecked && calledOn === undefined) due.push({ kind: 'firstCheck', dueOn: checkOn });
  if ((rootedNow ?? 0) > 0 && !held) due.push({ kind: 'movingOn', dueOn: dayAfter(since, days.movingOn.days) });
  if (calledOn === undefined && (rootedNow ?? 0) < plants) due.push({ kind: 'verdict', dueOn: dayAfter(since, days.verdict.days) });
  return due;
}
