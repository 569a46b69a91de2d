import type { EntryProblem, Problem, WrittenEntry } from '@sprigline/contract';
import type { EntryToSend } from '../entry-to-send.ts';

/** Something that was logged on this device, as it will be sent. Its id was made here, once: sent twice, it is written once. */
export type Work =
  | { readonly kind: 'entry'; readonly entry: EntryToSend }
  /** A record: a trip, a donor tree, a bundle. */
  | { readonly kind: 'record'; readonly method: 'POST' | 'PUT'; readonly path: string; readonly body: unknown }
  /** Bytes and not a Blob, which some browsers lose when they are closed. */
  | { readonly kind: 'photo'; readonly path: string; readonly type: string; readonly bytes: ArrayBuffer };

/** Who logged it: on a shared device not always who is signed in when it is sent. */
export interface Author {
  readonly personId: string;
  readonly name: string;
}

export interface ToKeep {
  /** Of the entry, or of the record or photo that it makes. */
  readonly id: string;
  /** The programme's name in addresses. */
  readonly programme: string;
  readonly author: Author;
  /** What it is about, in the words of the label: "JC-12". */
  readonly about: string;
  /** Labels that it was to have and that the server refused, the first one first. */
  readonly was?: readonly string[] | undefined;
  readonly work: Work;
}

/** What somebody decided about something that the server does not take: it is not sent any more, and stays readable here. */
export interface Decision {
  /** `given`: told to a coordinator as a note; `aside`: put aside for a reason. */
  readonly how: 'given' | 'aside';
  /** Milliseconds since 1970 by this device's clock. */
  readonly at: number;
  /** Of what was given: the entry `noted` that tells of it. */
  readonly noteId?: string | undefined;
  /** Calls that note back, should what it tells of be told anew here, or taken back: else a coordinator would book it a second time by hand. */
  readonly withdrawal?: ToKeep | undefined;
  readonly reason?: string | undefined;
}

export interface OutboxItem extends ToKeep {
  /** Order on this device, given by its store. */
  readonly at: number;
  /** Milliseconds since 1970 by this device's clock. */
  readonly keptAt: number;
  /** It was given to the network at least once: the server may have it, so it is corrected and no longer changed. */
  readonly isOut?: boolean | undefined;
  /** Why the server did not take it; nothing while it waits to be sent. */
  readonly refusal?: Problem | EntryProblem | undefined;
  readonly decided?: Decision | undefined;
}

/** What the server said of something sent. Kept for a while, for undoing and for its flags. */
export interface SentItem extends ToKeep {
  readonly sentAt: number;
  readonly status: WrittenEntry['status'];
  readonly flags: readonly WrittenEntry['flags'][number][];
}
