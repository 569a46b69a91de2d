import type { Previewed, WrittenEntry } from '@sprigline/contract';

/** What the books said of a round: for each entry what becomes of it, and in words why it was not taken. */
export interface Heard {
  readonly entries: readonly (WrittenEntry & { readonly words?: string | undefined })[];
  /** Nothing after saving. */
  readonly batches: Previewed['batches'];
}

/** The request as a whole was not taken, and why in words. */
export interface Unheard {
  readonly refused: string;
}
