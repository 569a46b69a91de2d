import type { Effect } from './books.ts';
import { hasNoMinute, type OrderKey, TURN } from './content-order.ts';
import type { Dead, Look, Stage } from './entry.ts';

/**
 * One entry as one batch feels it.
 *
 * A lift is an exit for the tray and an arrival for the liners. Each batch books
 * its own side with the number that was stated, so that a late entry never
 * runs on from one batch into the next.
 */
export type Fact = Arrival | Find | Exit | Count | Check | Carriage | Hold;

interface Told {
  readonly entryId: string;
  readonly day: string;
  readonly key: OrderKey;
}

export type ArrivalEffect = Extract<Effect, 'stuck' | 'received' | `${string}In`>;

/** `n` plants came in, from outside or from another batch. */
export interface Arrival extends Told {
  readonly act: 'arrived';
  readonly effect: ArrivalEffect;
  readonly n: number;
  readonly rooted?: number | undefined;
  /** A return has been elsewhere, among who knows what: it is held until somebody releases it. */
  readonly arrivesHeld?: boolean | undefined;
}

/** `n` more plants than anybody knew of. */
export interface Find extends Told {
  readonly act: 'found';
  readonly n: number;
}

export type ExitEffect = Extract<
  Effect,
  'died' | 'notRooted' | 'thrownOut' | 'wentOn' | `${string}Out` | 'givenAcross'
>;

/** `n` plants left the batch, dead or alive, as stated and not by a count. */
export interface Exit extends Told {
  readonly act: 'left';
  readonly effect: ExitEffect;
  readonly n: number;
  readonly cause?: string | undefined;
  readonly toStage?: Stage | undefined;
  /** Of the `n`, how many are known to have roots. */
  readonly rooted?: number | undefined;
  /** A count of none right after it. */
  readonly leavesNone?: boolean | undefined;
}

/** The whole batch was counted. A count of a sample is no fact of the books. */
export interface Count extends Told {
  readonly act: 'counted';
  readonly alive: number;
  readonly look: Look;
  readonly rooted?: number | undefined;
  readonly dead: readonly Dead[];
}

export interface Check extends Told {
  readonly act: 'checked';
  readonly alive: number;
  readonly dead: readonly Dead[];
  readonly notFound: number;
  readonly notLooked: number;
}

/** The whole batch was carried to another place. */
export interface Carriage extends Told {
  readonly act: 'carried';
  readonly placeId: string;
}

export interface Hold extends Told {
  readonly act: 'held' | 'released';
  /** Of a release: the entry whose hold ends; left out, every hold does. */
  readonly holdId?: string | undefined;
}

/** Facts that can change what the books hold; the others only say where the batch stands and whether it may go. */
export type BookingFact = Exclude<Fact, Carriage | Hold>;

export const canBook = (fact: Fact): fact is BookingFact =>
  fact.act !== 'carried' && fact.act !== 'held' && fact.act !== 'released';

/** Whether we chose its place in the day, because nobody told the minute. Arrivals always open the day. */
export const couldBeAnytime = ({ key }: Fact): boolean => hasNoMinute(key) && key.turn !== TURN.arrives;
