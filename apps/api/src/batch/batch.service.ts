import { Injectable } from '@nestjs/common';
import type { Batch, BatchInList, BatchQuery, Descent } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import { historyOf } from '../entry/history.queries.ts';
import type { Caller } from '../http/caller.ts';
import type { Part } from '../http/part-of-list.ts';
import { placeStoryOf } from '../place/place-story.queries.ts';
import { BatchDetailQueries, booksOf } from './batch-detail.queries.ts';
import { BatchListQueries } from './batch-list.queries.ts';
import { descentOf } from './descent.queries.ts';
import { historyItems } from './history.ts';
import { surroundingsOf } from './surroundings.ts';

@Injectable()
export class BatchService {
  constructor(
    private readonly database: Database,
    private readonly lists: BatchListQueries,
    private readonly details: BatchDetailQueries,
  ) {}

  list(caller: Caller, query: BatchQuery): Promise<Part<BatchInList>> {
    return this.database.inTransaction(caller, (sql) => this.lists.list(sql, caller.programmeId, query));
  }

  one(caller: Caller, id: string): Promise<Batch> {
    return this.database.inTransaction(caller, async (sql) => {
      const batch = await this.details.one(sql, caller.programmeId, id);
      const history = historyItems(await historyOf(sql, caller.programmeId, id), caller);
      const story = await placeStoryOf(sql, caller.programmeId, batch.stays.map(({ placeId }) => placeId));
      return { ...batch, books: booksOf(batch), history, ...surroundingsOf(batch.stays, story, caller) };
    });
  }

  descent(caller: Caller, donorTreeId: string): Promise<Descent> {
    return this.database.inTransaction(caller, (sql) => descentOf(sql, caller.programmeId, donorTreeId));
  }
}
