import { type Conditions, isGood, tapOfIncident } from './taps.ts';

/** An incident as it was told, after its corrections. Days are calendar days such as 2026-11-08. */
export interface ToldIncident {
  readonly placeId: string;
  readonly what: string;
  /** The day on which it was seen. */
  readonly observedOn: string;
  /** Minute of that day, 0..1439, when it is known. */
  readonly minute?: number | undefined;
  readonly lastGoodOn?: string | undefined;
  readonly untilDay?: string | undefined;
}

/** How a place was found on a round. */
export interface FoundPlace {
  readonly placeId: string;
  readonly day: string;
  readonly minute?: number | undefined;
  readonly conditions: Conditions;
}

export interface IncidentSpan {
  readonly from: string;
  /** Nothing while it is open. */
  readonly until?: string | undefined;
  /** A round saw it right again; nobody told an end. */
  readonly endSeen: boolean;
}

/**
 * From when to when something was wrong, both days included.
 *
 * It begins on the last day on which it was known to be good, since nobody knows in
 * which hour after that it failed; where that was not told, on the day it was seen.
 * It ends on the day that was told, or else on the first day after it on which a
 * round at the very same place found that thing right again; later on the same day
 * counts where both minutes are known.
 */
export function incidentSpan(incident: ToldIncident, found: readonly FoundPlace[]): IncidentSpan {
  const { observedOn, lastGoodOn, untilDay } = incident;
  const from = [lastGoodOn, observedOn, untilDay].filter((day) => day !== undefined).toSorted()[0] ?? observedOn;
  if (untilDay !== undefined) return { from: lastGoodOn ?? from, until: laterOf(untilDay, lastGoodOn ?? from), endSeen: false };

  const tap = tapOfIncident(incident.what);
  const right = found.filter((seen) => {
    const answer = tap && seen.conditions[tap];
    return tap !== undefined && answer !== undefined && seen.placeId === incident.placeId && isGood(tap, answer) && isLater(seen, incident);
  });
  const until = right.map(({ day }) => day).toSorted()[0];
  return { from, until, endSeen: until !== undefined };
}

function isLater(seen: FoundPlace, { observedOn, minute }: ToldIncident): boolean {
  if (seen.day !== observedOn) return seen.day > observedOn;
  return seen.minute !== undefined && minute !== undefined && seen.minute > minute;
}

/** Whether any day of one lies in the other; an open end has no last day. */
export function overlaps(one: { from: string; until?: string | undefined }, other: { from: string; until?: string | undefined }): boolean {
  return (one.until === undefined || other.from <= one.until) && (other.until === undefined || one.from <= other.until);
}

const laterOf = (one: string, other: string): string => (one > other ? one : other);
