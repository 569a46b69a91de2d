import { Injectable } from '@nestjs/common';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Author } from './author.ts';
import { Scribe, type Writing } from './judge/scribe.ts';
import { namedBy, type Named } from './named-ids.ts';
import { lock, lockAll } from './pages/locks.queries.ts';
import { OpenPages } from './pages/open-pages.ts';
import { openPages, type PageRows } from './pages/open-pages.queries.ts';
import { entryOfRow } from './pages/page-rows.ts';
import { reachOfHolds } from './pages/reach.queries.ts';
import { save } from './save/save.ts';
import { rootIdOf } from './stored-entry.ts';
import { answersOf, nothingWritten, type WrittenItem } from './written-item.ts';

/** So many entries of a sheet are taken at once: their pages have to fit into memory. */
const AT_ONCE = 2_000;

/** Writes entries and what follows from them, inside somebody's unit of work. */
@Injectable()
export class LedgerWriter {
  /**
   * Takes entries in order; what one of them opens, later ones may name.
   *
   * Locks what they touch until the transaction ends. Needs at most 6 round trips
   * whatever the length of the list; usually 3. A refused entry leaves no trace;
   * the others are written, unless they are to be written `together`.
   */
  async write(sql: UnitOfWork, author: Author, writing: Writing): Promise<WrittenItem[]> {
    const scribe = await this.#judge(sql, author, writing, (ids, isFirst) => lock(sql, author.programmeId, ids, isFirst));
    // Nothing has been saved yet: what the scribe took stands on its own pages only.
    if (writing.together && scribe.hasRefused) return nothingWritten(answersOf(scribe));
    await save(sql, author.programmeId, scribe.additions, scribe.keeper.changed(), scribe.pages);
    return answersOf(scribe);
  }

  /**
   * Takes the rows of a sheet, however many: in portions, inside the one unit of work.
   * Everybody else who logs in the programme waits until it is over.
   */
  async writeSheet(sql: UnitOfWork, author: Author, entries: Writing['entries'], onProgress?: (written: number) => void): Promise<WrittenItem[]> {
    await lockAll(sql, author.programmeId);
    const items: WrittenItem[] = [];
    for (let start = 0; start < entries.length; start += AT_ONCE) {
      const portion = entries.slice(start, start + AT_ONCE);
      const scribe = await this.#judge(sql, author, { door: 'import', entries: portion, confirm: new Set() });
      await save(sql, author.programmeId, scribe.additions, scribe.keeper.changed(), scribe.pages);
      items.push(...answersOf(scribe));
      onProgress?.(items.length);
    }
    return items;
  }

  /** What writing would do. Nothing is locked and nothing is written. */
  async preview(sql: UnitOfWork, author: Author, writing: Writing): Promise<Scribe> {
    return this.#judge(sql, author, writing);
  }

  async #judge(sql: UnitOfWork, author: Author, writing: Writing, lockIds?: (ids: Iterable<string>, isFirst: boolean) => Promise<void>): Promise<Scribe> {
    const reached = await reachOfHolds(sql, author.programmeId, writing.entries);
    const named = namedBy(writing.entries.map((entry) => ({ ...entry, said: entry.saying })));
    for (const batchId of [...reached.values()].flat()) named.ledger.add(batchId);

    let rows: PageRows | undefined;
    for (let isFirst = true; !rows || widen(named, rows, writing); isFirst = false) {
      await lockIds?.([...named.ledger, ...named.labels], isFirst);
      rows = await openPages(sql, author, named);
    }
    const scribe = new Scribe(new OpenPages(rows), author, writing, reached);
    for (const entry of writing.entries) scribe.take(entry);
    return scribe;
  }
}

/**
 * Adds what only the first look tells: the batches of corrected entries, and what
 * entries name that have waited for these. Says whether there was any.
 */
function widen(named: Named, rows: PageRows, { entries }: Writing): boolean {
  const size = named.ledger.size + named.records.size + named.labels.size;
  const awaited = new Set(rows.waiting.filter(({ waits_for_id }) => named.ledger.has(waits_for_id)).map(({ entry_id }) => entry_id));
  const waiting = rows.entries.filter(({ id }) => awaited.has(id)).map(entryOfRow);
  const more = namedBy(waiting);
  const corrected = new Set([
    ...entries.flatMap(({ saying }) => ('sawVersion' in saying ? [saying.entryId] : [])),
    ...waiting.map(rootIdOf),
  ]);
  for (const id of more.ledger) named.ledger.add(id);
  for (const id of more.records) named.records.add(id);
  for (const label of more.labels) named.labels.add(label);
  for (const { writtenBy } of waiting) if (writtenBy !== undefined) named.records.add(writtenBy);
  for (const { batch_id, entry_id } of rows.touches) if (corrected.has(entry_id)) named.ledger.add(batch_id);
  return named.ledger.size + named.records.size + named.labels.size > size;
}
