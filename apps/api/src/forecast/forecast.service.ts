import { Injectable } from '@nestjs/common';
import type { Forecast, ReadingFilter } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { HeadQueries } from '../reading/head.queries.ts';
import { forecastOfSpecies } from './forecast-of-species.ts';
import { StageBooksQueries } from './stage-books.queries.ts';

@Injectable()
export class ForecastService {
  constructor(
    private readonly database: Database,
    private readonly headQueries: HeadQueries,
    private readonly booksQueries: StageBooksQueries,
  ) {}

  /** Plants in pots month by month, of those here today, as the programme's own history has it. */
  async forecast(caller: Caller, filter: ReadingFilter): Promise<Forecast> {
    const { head, books } = await this.database.inTransaction(caller, async (sql) => {
      const head = await this.headQueries.head(sql, caller.programmeId);
      return { head, books: await this.booksQueries.of(sql, caller.programmeId, filter, head.asOf) };
    });
    return { ...head, species: forecastOfSpecies(books, head.asOf) };
  }
}
