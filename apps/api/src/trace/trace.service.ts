import { Injectable } from '@nestjs/common';
import type { Trace, TraceQuery } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { standingOf } from '../entry/standing.queries.ts';
import type { Caller } from '../http/caller.ts';
import { subjectOf } from './seeds.ts';
import { type Given, TraceQueries } from './trace.queries.ts';
import { MOST_SEEDS } from './walk.ts';

@Injectable()
export class TraceService {
  constructor(
    private readonly database: Database,
    private readonly queries: TraceQueries,
  ) {}

  /**
   * Where from, where to, what stood beside, who has it now. Tells no position.
   *
   * @throws DomainError `record/unknown`
   */
  trace(caller: Caller, asked: TraceQuery): Promise<Trace> {
    const { programmeId, zone } = caller;
    const subject = subjectOf(asked);
    return this.database.inTransaction(caller, async (sql) => {
      const { asOf, name } = await this.queries.head(sql, programmeId, subject, zone);
      const { given, sums, ...found } = await this.queries.follow(sql, programmeId, subject, asked);
      const outside = await this.#outside(sql, programmeId, given);
      const isCut = sums.seeds > MOST_SEEDS || sums.batches > found.batches.length || sums.beside > found.beside.length;
      return {
        ...found, asOf, outside, isCut, subject: { ...subject, name, from: asked.from ?? null, until: asked.until ?? null },
        sums: { batches: sums.batches, plants: sums.plants, beside: sums.beside, givenOutside: sums.given },
      };
    });
  }

  /** To whom: in the words of the entry as it stands after its corrections. */
  async #outside(sql: UnitOfWork, programmeId: string, given: readonly Given[]): Promise<Trace['outside']> {
    const standing = await standingOf(sql, programmeId, given.map(({ entryId }) => entryId));
    return given.map((one) => {
      const said = standing.get(one.entryId)?.said;
      return { ...one, to: said?.kind === 'givenOut' ? (said.outside ?? null) : null };
    });
  }
}
