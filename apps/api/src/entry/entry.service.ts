import { Injectable } from '@nestjs/common';
import type { Previewed, WriteEntries, Written } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { type Author, authorOf } from './author.ts';
import type { Writing } from './judge/scribe.ts';
import { LedgerWriter } from './ledger-writer.ts';
import { refuseWhatPartnersMayNot } from './partner-writing.queries.ts';
import { previewOf } from './preview.ts';

/** One request is one transaction: what it answers as written is written, whatever happens next. */
@Injectable()
export class EntryService {
  constructor(
    private readonly database: Database,
    private readonly writer: LedgerWriter,
  ) {}

  async write(caller: Caller, request: WriteEntries): Promise<Written> {
    const entries = await this.#judged(caller, request, (sql, author, writing) => this.writer.write(sql, author, writing));
    return { entries };
  }

  async preview(caller: Caller, request: WriteEntries): Promise<Previewed> {
    return this.#judged(caller, request, async (sql, author, writing) => previewOf(await this.writer.preview(sql, author, writing)));
  }

  /** The books are the house's: whoever may write this, their entry is held against all that is known. */
  async #judged<T>(caller: Caller, request: WriteEntries, work: (sql: UnitOfWork, author: Author, writing: Writing) => Promise<T>): Promise<T> {
    return this.database.inTransaction({ ...caller, partnerId: undefined }, async (sql) => {
      await refuseWhatPartnersMayNot(sql, caller, request.entries);
      return work(sql, authorOf(caller), writingOf(request));
    });
  }
}

const writingOf = ({ door, entries, confirm, together }: WriteEntries): Writing => ({ door, entries, confirm: new Set(confirm), together });
