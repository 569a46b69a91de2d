/**
 * What somebody saw or did, as it is written once and never changed.
 *
 * Every name here is a word that the nursery says. Days are calendar days in
 * the programme's zone, `YYYY-MM-DD`; minutes are minutes of that day, 0..1439;
 * plants are whole numbers. Ids are opaque strings: the domain only compares them.
 */

/** How far a plant has come. A stage may be skipped, never gone back. */
export const STAGES = ['cutting', 'liner', 'potted', 'planted'] as const;
export type Stage = (typeof STAGES)[number];

/** How a batch was seen, weakest first: from above, by a gentle tug, with the roots in sight. */
export const LOOKS = ['look', 'tug', 'lifted'] as const;
export type Look = (typeof LOOKS)[number];

/** How sure the person is of the cause they name. */
export type Certainty = 'seen' | 'likely' | 'unknown';

/** Through which door an entry came: the desk is asked questions, the others are flagged. */
export type Door = 'desk' | 'outbox' | 'import' | 'api';

/** Some of the dead in a count, with the cause as the eye sees it. */
export interface Dead {
  readonly n: number;
  readonly cause: string;
  readonly certainty: Certainty;
}

/** What one entry says, by kind. `batchId` is the batch that it was said of. */
export type Saying =
  | Stuck
  | Received
  | Counted
  | Died
  | ThrownOut
  | Called
  | WentOn
  | Moved
  | Restuck
  | GivenOut
  | Found
  | Mixed
  | Identified
  | Checked
  | Held
  | Treated
  | Incident
  | Noted
  | Withdrawn
  | Replaced;

export interface Stuck {
  readonly kind: 'stuck';
  readonly batchId: string;
  readonly stickingId: string;
  readonly n: number;
  readonly placeId: string;
}

export interface Received {
  readonly kind: 'received';
  readonly batchId: string;
  readonly stickingId: string;
  readonly stage: Stage;
  readonly n: number;
  readonly source: 'opening' | 'return' | 'partner' | 'purchase';
  readonly rooted?: number | undefined;
  readonly placeId: string;
}

/** Alive of the whole batch, or of a sample of `sampleOf`, which moves nothing. */
export interface Counted {
  readonly kind: 'counted';
  readonly batchId: string;
  readonly alive: number;
  readonly sampleOf?: number | undefined;
  readonly look: Look;
  readonly rooted?: number | undefined;
  readonly callused?: number | undefined;
  readonly dead: readonly Dead[];
}

export interface Died {
  readonly kind: 'died';
  readonly batchId: string;
  readonly n: number;
  readonly cause: string;
  readonly certainty: Certainty;
}

export interface ThrownOut {
  readonly kind: 'thrownOut';
  readonly batchId: string;
  readonly n: number;
  readonly reason: string;
}

/** The tray is over: `n` green and unrooted thrown out at the verdict. */
export interface Called {
  readonly kind: 'called';
  readonly batchId: string;
  readonly n: number;
}

/** `n` went on to the next stage or a later one, into a new batch or one of the same sticking. */
export interface WentOn {
  readonly kind: 'lifted' | 'potted' | 'planted';
  readonly batchId: string;
  readonly n: number;
  readonly toBatchId: string;
  readonly placeId: string;
  /** A count of none right after the act. */
  readonly leavesNone?: boolean | undefined;
}

/**
 * Another place at the same stage. Without `toBatchId` the whole batch goes and
 * only its stay changes; with it, `n` plants go into that batch: a split, or a
 * join where the batch was there before. Such an `n` is always stated.
 */
export type Moved =
  | { readonly kind: 'moved'; readonly batchId: string; readonly placeId: string; readonly toBatchId?: undefined }
  | {
      readonly kind: 'moved';
      readonly batchId: string;
      readonly placeId: string;
      readonly toBatchId: string;
      readonly n: number;
      /** Of the `n`, how many are known to have roots; left out when not told. */
      readonly rooted?: number | undefined;
    };

/** `n` unrooted, cut afresh, into a new sticking of the same donor tree. */
export interface Restuck {
  readonly kind: 'restuck';
  readonly batchId: string;
  readonly n: number;
  readonly toBatchId: string;
  readonly stickingId: string;
  readonly placeId: string;
}

/** To a partner in the programme (`toBatchId` is the batch in their hands) or outside. */
export interface GivenOut {
  readonly kind: 'givenOut';
  readonly batchId: string;
  readonly n: number;
  readonly toBatchId?: string | undefined;
  readonly rooted?: number | undefined;
}

export interface Found {
  readonly kind: 'found';
  readonly batchId: string;
  readonly n: number;
  readonly reason: string;
}

/** Whole or part of several batches become one. */
export interface Mixed {
  readonly kind: 'mixed';
  readonly toBatchId: string;
  readonly parts: readonly { readonly batchId: string; readonly n: number }[];
  readonly placeId: string;
}

/** `n` of a mixed batch belong to that sticking. */
export interface Identified {
  readonly kind: 'identified';
  readonly batchId: string;
  readonly stickingId: string;
  readonly toBatchId: string;
  readonly n: number;
  readonly placeId: string;
}

/** A look at planted trees. Only `dead` is a loss; what is in none of the four was not looked at. */
export interface Checked {
  readonly kind: 'checked';
  /** Left out when a whole plot was checked without telling its batches apart: then it moves nothing. */
  readonly batchId?: string | undefined;
  readonly alive: number;
  readonly dead: readonly Dead[];
  readonly notFound: number;
  readonly notLooked: number;
}

/**
 * Held plants stay where they are until released. One batch is held by `batchId`;
 * a hold on a place, donor tree, trip or medium lot names in `batchIds` those it reaches.
 */
export interface Held {
  readonly kind: 'held' | 'released';
  readonly batchId?: string | undefined;
  readonly batchIds?: readonly string[] | undefined;
  /** Of a release: the entry whose hold ends, while others stay; left out, all that hold the batch end. */
  readonly holdId?: string | undefined;
}

export interface Treated {
  readonly kind: 'treated';
  readonly batchId?: string | undefined;
}

export interface Incident {
  readonly kind: 'incident';
  readonly batchId?: undefined;
}

export interface Noted {
  readonly kind: 'noted';
  readonly batchId?: string | undefined;
  /** Somebody stood before it and saw nothing to report. */
  readonly lookedOver?: true | undefined;
}

/** The target leaves the books. `sawVersion` is the id of the entry or of the correction last seen. */
export interface Withdrawn {
  readonly kind: 'withdrawn';
  readonly entryId: string;
  readonly sawVersion: string;
}

/** The target changes batch, day or numbers, never its kind. */
export interface Replaced {
  readonly kind: 'replaced';
  readonly entryId: string;
  readonly sawVersion: string;
  /** What the target says from now on, with its own day and minute. */
  readonly instead: { readonly observedOn: string; readonly minute?: number | undefined; readonly saying: Saying };
}

export type Kind = Saying['kind'];

/** One entry: when it was seen, where it stands on its workday, and what it says. */
export interface Entry {
  readonly id: string;
  readonly observedOn: string;
  readonly minute?: number | undefined;
  readonly workdayId?: string | undefined;
  /** Line of the workday's sheet, from 1. */
  readonly line?: number | undefined;
  /** The calendar day, in the programme's zone, on which it reached the server. */
  readonly receivedOn: string;
  readonly door: Door;
  /** The phone's clock was off by more than two minutes, or by how much is unknown. */
  readonly clockUnsure?: boolean | undefined;
  /** The claimed author is no member, or no longer: kept for review, out of the books. */
  readonly authorUnverified?: boolean | undefined;
  readonly saying: Saying;
}
