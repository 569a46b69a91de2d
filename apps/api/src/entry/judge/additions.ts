import type { Opening } from '../opening/opened.ts';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch, KnownSticking } from '../pages/page-rows.ts';
import type { StoredEntry } from '../stored-entry.ts';

/** Rows that a request adds to the ledger. What follows from them, the books, is not here. */
export class Additions {
  readonly entries: StoredEntry[] = [];
  readonly touches: { readonly batchId: string; readonly entryId: string }[] = [];
  readonly batches: KnownBatch[] = [];
  readonly stickings: KnownSticking[] = [];
  readonly candidates: { readonly stickingId: string; readonly donorTreeId: string }[] = [];
  readonly labels: { readonly code: string; readonly batchId: string }[] = [];
  readonly parts: { readonly batchId: string; readonly fromBatchId: string; readonly n: number }[] = [];
  /** Entries that wait no longer. */
  readonly settled = new Set<string>();
  readonly #waits: { readonly entryId: string; readonly waitsForId: string }[] = [];

  constructor(private readonly pages: OpenPages) {}

  get waitingRows() {
    return this.#waits.filter(({ entryId }) => !this.settled.has(entryId));
  }

  open({ batch, sticking, candidates = [], label, parts = [] }: Opening): void {
    if (sticking) {
      this.pages.stickings.set(sticking.id, sticking);
      this.stickings.push(sticking);
      this.candidates.push(...[...new Set(candidates)].map((donorTreeId) => ({ stickingId: sticking.id, donorTreeId })));
    }
    if (!batch) return;
    this.pages.batches.set(batch.id, batch);
    this.batches.push(batch);
    this.parts.push(...summed(parts).map(([fromBatchId, n]) => ({ batchId: batch.id, fromBatchId, n })));
    if (label === undefined) return;
    this.pages.labels.add(label);
    this.labels.push({ code: label, batchId: batch.id });
  }

  /** @param rootId the entry itself, or the one that it corrects */
  touch(rootId: string, batchIds: readonly string[]): void {
    this.touches.push(...batchIds.map((batchId) => ({ batchId, entryId: rootId })));
  }

  waits(entry: StoredEntry, ids: readonly string[]): void {
    this.pages.keepWaiting(entry, ids);
    this.#waits.push(...ids.map((waitsForId) => ({ entryId: entry.id, waitsForId })));
  }

  settle(entryId: string): void {
    this.pages.waitsNoMore(entryId);
    this.settled.add(entryId);
  }
}

function summed(parts: NonNullable<Opening['parts']>): [string, number][] {
  const sums = new Map<string, number>();
  for (const { batchId, n } of parts) sums.set(batchId, (sums.get(batchId) ?? 0) + n);
  return [...sums];
}
