import { type Entry, touchedBatches } from '@sprigline/domain';
import type { RecordTable } from '../named-ids.ts';
import { type Receipt, rootIdOf, type StoredEntry } from '../stored-entry.ts';
import type { PageRows } from './open-pages.queries.ts';
import { entryOfRow, type KnownBatch, type KnownRecord, type KnownSticking } from './page-rows.ts';
import { Several } from './several.ts';

/**
 * The pages of the ledger that one request has open: what was there, and what it adds.
 * Only the save writes; until then everything happens here.
 */
export class OpenPages {
  readonly receipt: Receipt;
  readonly entries: Map<string, StoredEntry>;
  readonly batches: Map<string, KnownBatch>;
  readonly stickings: Map<string, KnownSticking>;
  readonly labels: Set<string>;
  /** Per entry without effect: the ids it waits for; and the other way round. */
  readonly #waitsFor = new Several();
  readonly #waiters = new Several();
  readonly #records: Map<string, KnownRecord>;
  readonly #rootsOfBatch = new Several();
  readonly #batchesOfRoot = new Several();
  readonly #correctionsOf = new Several();

  constructor(rows: PageRows) {
    this.receipt = { at: rows.at, day: rows.day };
    this.entries = new Map(rows.entries.map((row) => [row.id, entryOfRow(row)]));
    this.batches = new Map(rows.batches.map((batch) => [batch.id, batch]));
    this.stickings = new Map(rows.stickings.map((sticking) => [sticking.id, sticking]));
    this.labels = new Set(rows.labels);
    this.#records = new Map(rows.records.map((record) => [`${record.table} ${record.id}`, record]));
    for (const { entry_id, waits_for_id } of rows.waiting) this.#wait(entry_id, waits_for_id);
    for (const { batch_id, entry_id } of rows.touches) this.#touch(batch_id, entry_id);
    for (const entry of this.entries.values()) this.#file(entry);
  }

  record(table: RecordTable, id: string): KnownRecord | undefined {
    return this.#records.get(`${table} ${id}`);
  }

  /** Adds an entry that takes effect. Answers the batches that it newly says something of. */
  add(entry: StoredEntry): string[] {
    this.entries.set(entry.id, entry);
    this.#file(entry);
    const root = rootIdOf(entry);
    const fresh = touchedBatches(entry.saying).filter((id) => this.batches.has(id) && !this.#batchesOfRoot.of(root).has(id));
    for (const batchId of fresh) this.#touch(batchId, root);
    return fresh;
  }

  /** Keeps an entry that has no effect yet. */
  keepWaiting(entry: StoredEntry, waitsFor: readonly string[]): void {
    this.entries.set(entry.id, entry);
    for (const id of waitsFor) this.#wait(entry.id, id);
  }

  isWaiting(entryId: string): boolean {
    return this.#waitsFor.of(entryId).size > 0;
  }

  waitersFor(id: string): StoredEntry[] {
    return this.#pick(this.#waiters.of(id)).filter((entry) => this.isWaiting(entry.id));
  }

  waitsNoMore(entryId: string): void {
    this.#waitsFor.delete(entryId);
  }

  /** Batches that an entry says something of, in any of its versions. */
  batchesOf(rootId: string): ReadonlySet<string> {
    return this.#batchesOfRoot.of(rootId);
  }

  /** Corrections that have taken effect, or are rivals of such. Those that wait say nothing yet. */
  correctionsOf(rootId: string): StoredEntry[] {
    return this.#pick(this.#correctionsOf.of(rootId)).filter(({ id }) => !this.isWaiting(id));
  }

  /** Everything ever said of a batch: entries that name it in any version, with all their corrections. */
  entriesAbout(batchId: string): Entry[] {
    const roots = [...this.#rootsOfBatch.of(batchId)];
    return roots.flatMap((root) => [...this.#pick([root]), ...this.correctionsOf(root)]);
  }

  #pick(ids: Iterable<string>): StoredEntry[] {
    return [...ids].flatMap((id) => this.entries.get(id) ?? []);
  }

  #file(entry: StoredEntry): void {
    const root = rootIdOf(entry);
    if (root !== entry.id) this.#correctionsOf.add(root, entry.id);
  }

  #wait(entryId: string, id: string): void {
    this.#waitsFor.add(entryId, id);
    this.#waiters.add(id, entryId);
  }

  #touch(batchId: string, rootId: string): void {
    this.#rootsOfBatch.add(batchId, rootId);
    this.#batchesOfRoot.add(rootId, batchId);
  }
}
