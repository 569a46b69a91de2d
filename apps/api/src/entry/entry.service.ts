import { Injectable } from '@nestjs/common';
import type { Previewed, WriteEntries, Written } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { authorOf } from './author.ts';
import type { Writing } from './judge/scribe.ts';
import { LedgerWriter } from './ledger-writer.ts';
import { previewOf } from './preview.ts';

/** One request is one transaction: what it answers as written is written, whatever happens next. */
@Injectable()
export class EntryService {
  constructor(
    private readonly database: Database,
    private readonly writer: LedgerWriter,
  ) {}

  async write(caller: Caller, request: WriteEntries): Promise<Written> {
    const entries = await this.database.inTransaction(caller, (sql) => this.writer.write(sql, authorOf(caller), writingOf(request)));
    return { entries };
  }

  async preview(caller: Caller, request: WriteEntries): Promise<Previewed> {
    return this.database.inTransaction(caller, async (sql) => previewOf(await this.writer.preview(sql, authorOf(caller), writingOf(request))));
  }
}

const writingOf = ({ door, entries, confirm, together }: WriteEntries): Writing => ({ door, entries, confirm: new Set(confirm), together });
