import { Injectable } from '@nestjs/common';
import type { DueItem, DuePlaces, DuePlacesQuery, DueQuery, NewPutOff, TaxonDays } from '@sprigline/contract';
import { dayAfter, DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { DueDaysQueries } from './due-days.queries.ts';
import { DueFoundQueries, sortKeysOf } from './due-found.queries.ts';
import { PutOffQueries } from './put-off.queries.ts';

/** Longer is never: a thing put off over and over is looked at once a year at least. */
const LONGEST_PUT_OFF_DAYS = 366;

@Injectable()
export class DueService {
  constructor(
    private readonly database: Database,
    private readonly found: DueFoundQueries,
    private readonly days: DueDaysQueries,
    private readonly putOffs: PutOffQueries,
  ) {}

  list(caller: Caller, { after, limit, ...asked }: DueQuery): Promise<Part<DueItem>> {
    const [day = '', rank = '', key = ''] = keysAfter(after, 3) ?? [];
    return this.database.inTransaction(caller, async (sql) => {
      const items = await this.found.list(sql, caller.programmeId, { ...asked, limit: limit + 1, after: after === undefined ? undefined : [day, rank, key] });
      const part = partOf(items, limit, sortKeysOf);
      return { ...part, items: part.items.map(({ rank: _, ...item }) => item) };
    });
  }

  /** Where to walk, the nearest day first. */
  byPlace(caller: Caller, asked: DuePlacesQuery): Promise<DuePlaces> {
    return this.database.inTransaction(caller, (sql) => this.found.byPlace(sql, caller.programmeId, asked));
  }

  /** When cuttings of each species are looked at, moved on and called, and why then. */
  daysOfTaxa(caller: Caller): Promise<TaxonDays[]> {
    return this.database.inTransaction(caller, (sql) => this.days.ofTaxa(sql, caller.programmeId));
  }

  /**
   * Puts one thing off. Sending it twice does it once.
   *
   * @throws DomainError `due/until-out-of-reach`, `due/id-reused`
   * @throws DomainError `due/not-due-then` when it is not due on that day, or not any more
   */
  async putOff(caller: Caller, asked: NewPutOff): Promise<void> {
    await this.database.inTransaction(caller, async (sql) => {
      if (await this.putOffs.isThere(sql, caller, asked)) return;
      const { item, today } = await this.found.one(sql, caller.programmeId, asked);
      if (asked.until < today || asked.until > dayAfter(today, LONGEST_PUT_OFF_DAYS)) {
        throw new DomainError('due/until-out-of-reach', `choose a day from ${today} to ${dayAfter(today, LONGEST_PUT_OFF_DAYS)}`);
      }
      if (item?.dueOn !== asked.dueOn) {
        throw new DomainError('due/not-due-then', item ? `it is due on ${item.dueOn}: look at the list again` : 'nobody waits for that any more: look at the list again');
      }
      await this.putOffs.write(sql, caller, asked, item.place.id);
    });
  }
}
