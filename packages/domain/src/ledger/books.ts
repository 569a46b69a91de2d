import type { Look, Stage } from './entry.ts';
import type { Looks } from './looks.ts';

/** What is fixed about a batch from its opening on, even when the opening entry is withdrawn. */
export interface BatchIdentity {
  readonly id: string;
  readonly stage: Stage;
  /** The sticking that its plants belong to; nothing for a mixed batch. */
  readonly stickingId?: string | undefined;
  readonly openingEntryId: string;
  readonly openingPlaceId: string;
}

/**
 * One booked change of a batch. `n` is at least 1; the direction lies in the effect.
 *
 * In:  `stuck received wentIn splitIn restuckIn mixedIn identifiedIn givenIn found takenBack`
 * Out: `died unaccounted notRooted thrownOut wentOn splitOut restuckOut mixedOut identifiedOut givenOut givenAcross`
 *
 * `givenOut` left the programme; `givenAcross` went to a partner's batch inside it.
 * `takenBack` undoes an unaccounted loss of this batch that turned out to be a miscount.
 */
export const EFFECTS_IN = [
  'stuck', 'received', 'wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn', 'found', 'takenBack',
] as const;
export const EFFECTS_OUT = [
  'died', 'unaccounted', 'notRooted', 'thrownOut', 'wentOn', 'splitOut', 'restuckOut', 'mixedOut', 'identifiedOut',
  'givenOut', 'givenAcross',
] as const;
export type Effect = (typeof EFFECTS_IN)[number] | (typeof EFFECTS_OUT)[number];

export interface Movement {
  /** The entry that booked it. */
  readonly entryId: string;
  readonly day: string;
  readonly effect: Effect;
  readonly n: number;
  /** Cause of a death, or reason of a throwing out. */
  readonly cause?: string | undefined;
  /** For `wentOn`: the stage gone on to. */
  readonly toStage?: Stage | undefined;
  /** For `takenBack`: the entry whose unaccounted loss is undone. */
  readonly undoes?: string | undefined;
  /** For losses: the day the whole batch was last seen at least as strongly. The loss lies in (lastSeen, day]. */
  readonly lastSeen?: string | undefined;
}

/** The batch stood there from that day; until the next stay, or until it is empty. */
export interface Stay {
  readonly placeId: string;
  readonly from: string;
  readonly entryId: string;
}

export const FLAG_CODES = [
  'order-unknown', 'called-by-count', 'took-more', 'found-by-count', 'found-told', 'two-readings',
  'dead-beyond-shortfall', 'rooted-fell', 'opening-withdrawn', 'rival-correction', 'day-in-future', 'clock-unsure',
  'held-moved', 'not-found-twice', 'author-unverified', 'waiting',
] as const;
export type FlagCode = (typeof FLAG_CODES)[number];

/** Something a coordinator should look at. It never stops an entry from being kept. */
export interface Flag {
  readonly code: FlagCode;
  /** The entry it was raised at; for `order-unknown` the last of that day in order. */
  readonly entryId: string;
  readonly day: string;
  /** Plants concerned, where the flag is about a number of plants. */
  readonly n?: number | undefined;
}

/** What is known of roots. Blank is not 0: `now` is undefined when nobody has told. */
export interface Rooted {
  readonly now?: number | undefined;
  /** Running maximum of rooted seen + gone on. */
  readonly ever: number;
  /** Strength of the look that told `now`. */
  readonly look?: Look | undefined;
  readonly seenOn?: string | undefined;
}

/** The books of one batch after its facts have been replayed in order. */
export interface Books {
  readonly balance: number;
  readonly movements: readonly Movement[];
  readonly stays: readonly Stay[];
  readonly rooted: Rooted;
  /** Last whole look, or the opening. Undefined while the opening is withdrawn and nothing was seen. */
  readonly lastSeen?: { readonly day: string; readonly look: Look } | undefined;
  readonly looks: Looks;
  /** Planted trees that the last check missed; still in stock. */
  readonly notFound: number;
  /** Entries that hold it, in the order in which they do; none when it may go. */
  readonly heldBy: readonly string[];
  /** Given to a partner and not yet counted there. */
  readonly unconfirmed: boolean;
  /** The tray was called: nothing is waited for any more. */
  readonly calledOn?: string | undefined;
  readonly flags: readonly Flag[];
}
