import type { Entry, Kind } from './entry.ts';

/**
 * What decides which of two facts comes first. It is made of what was said,
 * never of when it arrived, so that late entries end up where they belong and
 * every machine arrives at the same books.
 */
export interface OrderKey {
  readonly day: string;
  /** Minute of the day; -1 before all of them, 1440 after all of them. */
  readonly moment: number;
  readonly turn: number;
  readonly workdayId: string;
  readonly line: number;
  readonly id: string;
}

const START_OF_DAY = -1;
const END_OF_DAY = 1440;

/** Whose turn it is at one moment. Plants must be there before they can die, be counted or leave. */
export const TURN = { arrives: 0, dies: 1, isSeen: 2, leaves: 3, concernsNoPlants: 4 } as const;
export type Turn = (typeof TURN)[keyof typeof TURN];

/** A hold takes its turn with the arrivals: a move on the day of the hold has come too late. */
const TURN_OF_KIND: Readonly<Record<Kind, Turn>> = {
  stuck: TURN.arrives,
  received: TURN.arrives,
  found: TURN.arrives,
  held: TURN.arrives,
  released: TURN.arrives,
  died: TURN.dies,
  counted: TURN.isSeen,
  checked: TURN.isSeen,
  thrownOut: TURN.leaves,
  called: TURN.leaves,
  lifted: TURN.leaves,
  potted: TURN.leaves,
  planted: TURN.leaves,
  moved: TURN.leaves,
  restuck: TURN.leaves,
  givenOut: TURN.leaves,
  mixed: TURN.leaves,
  identified: TURN.leaves,
  treated: TURN.concernsNoPlants,
  incident: TURN.concernsNoPlants,
  noted: TURN.concernsNoPlants,
  withdrawn: TURN.concernsNoPlants,
  replaced: TURN.concernsNoPlants,
};

/** One entry can take two turns: what leaves one batch arrives in another. */
export function orderKey(entry: Entry, turn: Turn = TURN_OF_KIND[entry.saying.kind]): OrderKey {
  return {
    day: entry.observedOn,
    moment: minuteOf(entry) ?? (turn === TURN.arrives ? START_OF_DAY : END_OF_DAY),
    turn,
    workdayId: entry.workdayId ?? '',
    line: entry.line ?? 0,
    id: entry.id,
  };
}

/** A clock that was off by more than two minutes still knows the day, but not the minute. */
const minuteOf = (entry: Entry): number | undefined => (entry.clockUnsure ? undefined : entry.minute);

/** Whether the order within the day was chosen by us, because nobody told the minute. */
export const hasNoMinute = ({ moment }: OrderKey): boolean => moment === START_OF_DAY || moment === END_OF_DAY;

export function compareKeys(a: OrderKey, b: OrderKey): number {
  return (
    compareText(a.day, b.day) ||
    a.moment - b.moment ||
    a.turn - b.turn ||
    compareText(a.workdayId, b.workdayId) ||
    a.line - b.line ||
    compareText(a.id, b.id)
  );
}

/** Orders entries by content alone; negative when `a` comes first, 0 only for the same entry. */
export const contentOrder = (a: Entry, b: Entry): number => compareKeys(orderKey(a), orderKey(b));

/** By code unit, as every machine does alike; a locale would not. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
