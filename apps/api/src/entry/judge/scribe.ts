import type { NewEntry } from '@sprigline/contract';
import { type Books, type Door, DomainError, keptLabel, refuseMistypedLabel, touchedBatches } from '@sprigline/domain';
import type { Author } from '../author.ts';
import { BookKeeper } from '../books/book-keeper.ts';
import type { Opening } from '../opening/opened.ts';
import { openingOf } from '../opening/opening.ts';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch } from '../pages/page-rows.ts';
import { isSameContent } from '../same-content.ts';
import { rootIdOf, type StoredEntry, storedEntry } from '../stored-entry.ts';
import { Additions } from './additions.ts';
import { refuseAtDesk } from './desk.ts';
import { missingEntries, missingFor } from './missing.ts';
import { mayCorrectOnArrival, refuseCorrection, refuseStaleVersion, writerOf } from './refuse-correction.ts';
import { refuseUnknownRecords } from './refuse-unknown-records.ts';

export interface Writing {
  readonly door: Door;
  readonly entries: readonly NewEntry[];
  /** Ids of entries to take although they look wrong. */
  readonly confirm: ReadonlySet<string>;
  /** All or nothing. */
  readonly together?: boolean;
}

export interface Outcome {
  readonly id: string;
  readonly status: 'written' | 'already' | 'waiting' | 'refused';
  readonly refusal?: DomainError;
}

/** Takes entries one after the other onto the open pages. A bad one does not keep the others out. */
export class Scribe {
  readonly keeper: BookKeeper;
  readonly additions: Additions;
  readonly #outcomes: Outcome[] = [];
  /** Entries of this request that waited for later ones of it. */
  readonly #woken = new Set<string>();

  /** @param reached per hold on something else than a batch: the batches that it reaches */
  constructor(
    readonly pages: OpenPages,
    private readonly author: Author,
    private readonly writing: Writing,
    private readonly reached: ReadonlyMap<string, readonly string[]>,
  ) {
    this.keeper = new BookKeeper(pages);
    this.additions = new Additions(pages);
  }

  /** In the order in which the entries were taken. */
  get outcomes(): Outcome[] {
    return this.#outcomes.map((each) => (each.status === 'waiting' && this.#woken.has(each.id) ? { ...each, status: 'written' } : each));
  }

  get hasRefused(): boolean {
    return this.#outcomes.some(({ status }) => status === 'refused');
  }

  take(said: NewEntry): void {
    try {
      this.#outcomes.push({ id: said.id, status: this.#take(said) });
    } catch (refusal) {
      if (!(refusal instanceof DomainError)) throw refusal;
      this.#outcomes.push({ id: said.id, status: 'refused', refusal });
    }
  }

  #take(said: NewEntry): Outcome['status'] {
    const earlier = this.pages.entries.get(said.id);
    if (earlier) return this.#again(said, earlier);

    const { door } = this.writing;
    refuseUnknownRecords(said, this.pages);
    if ('label' in said.saying && said.saying.label !== undefined) this.#refuseMistyped(said.saying.label);
    const entry = this.#withAuthor(storedEntry(said, door, this.author, this.pages.receipt, this.reached.get(said.id)));
    this.#refuseCorrection(entry);
    const missing = missingFor(entry, this.pages);
    if (missing.length > 0 && door === 'desk') this.#refuseMissing(entry, missing);

    const opening = missing.length > 0 ? undefined : openingOf(entry, this.pages);
    const books = opening && door === 'desk' ? this.#refuseAtDesk(entry, opening) : undefined;
    this.additions.entries.push(entry);
    if (opening) this.#enter(entry, opening, books);
    else this.additions.waits(entry, missing);
    return opening ? 'written' : 'waiting';
  }

  /** Labels of an old sheet are as they are, and of one that is there already something else is said; a correction keeps the label that is there. */
  #refuseMistyped(label: string): void {
    if (this.writing.door !== 'import' && !this.pages.labels.has(keptLabel(label))) refuseMistypedLabel(label);
  }

  #again(said: NewEntry, earlier: StoredEntry): Outcome['status'] {
    if (!isSameContent(said, earlier)) throw new DomainError('entry/id-reused', 'that id was used for another entry: make a new one');
    return this.pages.isWaiting(said.id) ? 'waiting' : 'already';
  }

  /** What a phone brings for somebody who has left is a claim: kept, and out of the books. */
  #withAuthor(entry: StoredEntry): StoredEntry {
    const isClaim = this.writing.door === 'outbox' || this.writing.door === 'api';
    const isGone = [entry.seenBy, entry.writtenBy].some((id) => id !== undefined && this.pages.record('person', id)?.gone === true);
    return isClaim && isGone ? { ...entry, authorUnverified: true } : entry;
  }

  #refuseCorrection(entry: StoredEntry): void {
    const { said } = entry;
    if (said.kind !== 'withdrawn' && said.kind !== 'replaced') return;
    const target = this.pages.entries.get(said.entryId);
    if (!target) return;
    refuseCorrection(said, target, writerOf(entry, target, this.author), this.pages.receipt.at);
    if (this.writing.door === 'desk') refuseStaleVersion(said, this.pages);
  }

  #refuseMissing(entry: StoredEntry, [id = '']: readonly string[]): never {
    if (missingEntries(entry, this.pages).length > 0) throw new DomainError('entry/unknown', 'no entry has this id', { entryId: id });
    throw new DomainError('batch/unknown', 'no batch has this id', { batchId: id });
  }

  #refuseAtDesk(entry: StoredEntry, opening: Opening): ReadonlyMap<string, Books> {
    const batches = this.#touchedBy(entry, opening).map((id) => this.#batch(id, opening));
    return refuseAtDesk(entry, batches, this.pages, this.keeper, this.writing.confirm.has(entry.id));
  }

  /** @param books of what it touches, with it in them, if they are known already */
  #enter(entry: StoredEntry, opening: Opening, books?: ReadonlyMap<string, Books>): void {
    const touched = this.#touchedBy(entry, opening);
    for (const batchId of touched) this.keeper.remember(batchId);
    // Only now, since what waits must not be in the books that are remembered.
    if (this.pages.isWaiting(entry.id)) this.#settle(entry.id);
    this.additions.open(opening);
    this.additions.touch(rootIdOf(entry), this.pages.add(entry));
    for (const batchId of touched) this.keeper.turnTo(batchId, books?.get(batchId));

    // A correction of an entry that waits tells it where it belongs, or withdraws it.
    if (this.pages.isWaiting(rootIdOf(entry))) this.#settle(rootIdOf(entry));
    for (const id of [entry.id, opening.batch?.id, opening.sticking?.id]) if (id !== undefined) this.#wake(id);
  }

  /** What waited for something that has just arrived takes effect now, and so may what waited for that. */
  #wake(arrivedId: string): void {
    for (const entry of this.pages.waitersFor(arrivedId)) {
      const missing = missingFor(entry, this.pages);
      const opening = missing.length > 0 ? undefined : this.#fittingOpening(entry);
      if (missing.length > 0) this.additions.waits(entry, missing);
      if (opening) this.#enter(entry, opening);
    }
  }

  /** What does not fit the thing that it waited for goes on waiting, for a coordinator to mend. */
  #fittingOpening(entry: StoredEntry): Opening | undefined {
    try {
      return mayCorrectOnArrival(entry, this.pages) ? openingOf(entry, this.pages) : undefined;
    } catch (refusal) {
      if (refusal instanceof DomainError) return undefined;
      throw refusal;
    }
  }

  #settle(entryId: string): void {
    this.additions.settle(entryId);
    this.#woken.add(entryId);
  }

  /** All batches that feel the entry: those it names, those that an earlier version named, the one it opens. */
  #touchedBy(entry: StoredEntry, { batch }: Opening): string[] {
    const named = touchedBatches(entry.saying).filter((id) => this.pages.batches.has(id) || id === batch?.id);
    return [...new Set([...this.pages.batchesOf(rootIdOf(entry)), ...named])];
  }

  #batch(batchId: string, { batch }: Opening): KnownBatch {
    const known = this.pages.batches.get(batchId) ?? (batch?.id === batchId ? batch : undefined);
    if (!known) throw new Error('an entry touches a batch that no page holds');
    return known;
  }
}
