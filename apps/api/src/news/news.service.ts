import { Injectable } from '@nestjs/common';
import type { News, NewsEntry, NewsQuery } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import type { Part } from '../http/part-of-list.ts';
import { NewsQueries } from './news.queries.ts';

/** What is new to somebody at the desk. Opening a page marks nothing: they say themselves that they have looked. */
@Injectable()
export class NewsService {
  constructor(
    private readonly database: Database,
    private readonly queries: NewsQueries,
  ) {}

  since(caller: Caller): Promise<News> {
    return this.database.inTransaction(caller, (sql) => this.queries.since(sql, caller));
  }

  entries(caller: Caller, query: NewsQuery): Promise<Part<NewsEntry>> {
    return this.database.inTransaction(caller, (sql) => this.queries.entries(sql, caller.programmeId, query));
  }

  seen(caller: Caller, until: string): Promise<void> {
    return this.database.inTransaction(caller, (sql) => this.queries.seen(sql, caller, until));
  }
}
