import { type Books, type Entry, replay } from '@sprigline/domain';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch } from '../pages/page-rows.ts';

/** A batch whose books a request changed. */
export interface ChangedBooks {
  readonly batch: KnownBatch;
  /** Not there for a batch that the request opened. */
  readonly before: Books | undefined;
  readonly after: Books;
}

/** Replays batches when they are asked for, and remembers how their books were. */
export class BookKeeper {
  readonly #pages: OpenPages;
  readonly #before = new Map<string, Books | undefined>();
  readonly #now = new Map<string, Books>();

  constructor(pages: OpenPages) {
    this.#pages = pages;
  }

  now(batchId: string): Books {
    const kept = this.#now.get(batchId);
    if (kept) return kept;

    const books = replay(this.#batch(batchId), this.#pages.entriesAbout(batchId));
    this.#now.set(batchId, books);
    return books;
  }

  /** The books as they would be with one entry more. */
  with(batch: KnownBatch, entries: readonly Entry[]): Books {
    return replay(batch, [...this.#pages.entriesAbout(batch.id), ...entries]);
  }

  /** To be called before a batch changes: how its books were, nothing for one that is being opened. */
  remember(batchId: string): void {
    if (!this.#before.has(batchId)) this.#before.set(batchId, this.#pages.batches.has(batchId) ? this.now(batchId) : undefined);
  }

  /** What was known of a batch's books holds no more: these do, or whatever a replay will say. */
  turnTo(batchId: string, books?: Books): void {
    if (books) this.#now.set(batchId, books);
    else this.#now.delete(batchId);
  }

  changed(): ChangedBooks[] {
    return [...this.#before].sort().map(([batchId, before]) => ({ batch: this.#batch(batchId), before, after: this.now(batchId) }));
  }

  #batch(batchId: string): KnownBatch {
    const batch = this.#pages.batches.get(batchId);
    if (!batch) throw new Error('the books of a batch were asked for that no page holds');
    return batch;
  }
}
