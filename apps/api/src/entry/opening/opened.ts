import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch, KnownSticking } from '../pages/page-rows.ts';

/** What an entry brings into being: each only if it is not there yet. */
export interface Opening {
  readonly batch?: KnownBatch | undefined;
  readonly sticking?: KnownSticking | undefined;
  /** Donor trees that the sticking may be of. */
  readonly candidates?: readonly string[] | undefined;
  readonly label?: string | undefined;
  readonly parts?: readonly { readonly batchId: string; readonly n: number }[] | undefined;
}

/** An entry about to open something; `id` is that of the entry corrected, where it is a correction. */
export interface OpeningEntry {
  readonly id: string;
  readonly observedOn: string;
  readonly pages: OpenPages;
}
