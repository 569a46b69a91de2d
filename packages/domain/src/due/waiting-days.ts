import { DomainError } from '../errors.ts';

/** The three days of a sticking, counted from the day it was stuck. */
export interface DaysOf<T> {
  /** Roots are looked for, the first time. */
  readonly firstCheck: T;
  /** What has not rooted by then is called. */
  readonly verdict: T;
  /** What has rooted goes on. */
  readonly movingOn: T;
}

/** So many days, and why so many. */
export interface WaitingDay {
  /** Whole days from sticking, at least 1. */
  readonly days: number;
  /** `written`: the programme says so; `history`: from its own closed stickings; `default`: neither, so Sprigline's. */
  readonly basis: 'written' | 'history' | 'default';
  /** For `history`: how many stickings told. */
  readonly stickings?: number | undefined;
}

/**
 * Used while a programme has said nothing and has no history of its own.
 *
 * First check: first roots of *Juniperus communis* from six weeks (Wilkins TC, Duckworth JC 2011, Breaking new
 * ground for juniper, Plantlife, p. 30). Verdict: several months to a year to root (the same species in the
 * greenhouse, mdpi.com/2037-0164/16/2/57), so a year. Moving on: half had rooted at six months (*Pinus muricata*,
 * Millar CI 1987, New Forests 3:231-238), taken over as a judgement.
 */
export const DEFAULT_DAYS: DaysOf<number> = { firstCheck: 42, verdict: 365, movingOn: 180 };

/** Fewer closed stickings say little: one odd tray would set the day. */
export const STICKINGS_NEEDED = 5;

/** Days from sticking, one for each closed sticking of the species that rooted at all; in any order. */
export interface RootingHistory {
  /** Until somebody first saw roots, or the first plant went on. */
  readonly firstRooted: readonly number[];
  /** Until the first plant went on. */
  readonly firstGoneOn: readonly number[];
  /** Until the last plant went on. */
  readonly lastGoneOn: readonly number[];
}

/**
 * When cuttings of a species are looked at, moved on and called.
 *
 * What somebody wrote down holds. Else, from five closed stickings on, the programme's own history: the median day
 * on which roots were first seen; the median day on which the first plant went on; and for the verdict the day by
 * which nine in ten of the stickings had given their last plant, since waiting longer seldom gave more. Roots are
 * there before they are seen, so a group that looks late gets late days: it should write down its own.
 *
 * @param written what the programme says of the species; undefined where it says nothing
 * @throws DomainError `due/not-a-number-of-days` for anything but whole days, at least 1 (history: at least 0)
 */
export function waitingDays(written: Partial<DaysOf<number | undefined>>, history: RootingHistory): DaysOf<WaitingDay> {
  return {
    firstCheck: chosen(written.firstCheck, history.firstRooted, 0.5, DEFAULT_DAYS.firstCheck),
    verdict: chosen(written.verdict, history.lastGoneOn, 0.9, DEFAULT_DAYS.verdict),
    movingOn: chosen(written.movingOn, history.firstGoneOn, 0.5, DEFAULT_DAYS.movingOn),
  };
}

function chosen(written: number | undefined, seen: readonly number[], share: number, usual: number): WaitingDay {
  if (written !== undefined) return { days: wholeDays(written, 1), basis: 'written' };
  if (seen.length < STICKINGS_NEEDED) return { days: usual, basis: 'default' };
  // Nearest rank: a day on which it really happened, never one in between.
  const inOrder = seen.map((days) => wholeDays(days, 0)).sort((a, b) => a - b);
  const day = inOrder[Math.ceil(share * inOrder.length) - 1] ?? usual;
  return { days: Math.max(1, day), basis: 'history', stickings: seen.length };
}

function wholeDays(days: number, least: number): number {
  if (Number.isSafeInteger(days) && days >= least) return days;
  throw new DomainError('due/not-a-number-of-days', `a wait is a whole number of days, at least ${least}`, { days });
}
