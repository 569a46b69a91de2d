import { Injectable } from '@nestjs/common';
import type { SecondOpinion } from '@sprigline/contract';
import { known } from '../database/known.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { DueDaysQueries } from '../due/due-days.queries.ts';
import type { Caller } from '../http/caller.ts';
import { opinionOfRows } from './opinion-of-rows.ts';
import { PastQueries } from './past.queries.ts';
import { type StuckRow, StuckQueries } from './stuck.queries.ts';

/** What somebody with experience would ask on the day of sticking. It warns and never blocks. */
@Injectable()
export class SecondOpinionService {
  constructor(
    private readonly database: Database,
    private readonly stuck: StuckQueries,
    private readonly past: PastQueries,
    private readonly dueDays: DueDaysQueries,
  ) {}

  /** @throws DomainError `record/unknown` */
  async on(caller: Caller, which: 'sticking' | 'trip', id: string): Promise<SecondOpinion> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      const rows = await this.stuck.lines(sql, programmeId, which, id);
      if (rows.length === 0) known((await this.stuck.isThere(sql, programmeId, which, id)) || undefined);
      return { groups: await this.#groups(sql, programmeId, rows) };
    });
  }

  async #groups(sql: UnitOfWork, programmeId: string, rows: readonly StuckRow[]): Promise<SecondOpinion['groups']> {
    if (rows.length === 0) return [];
    const past = await this.past.ofTaxa(sql, programmeId, [...new Set(rows.map(({ taxonId }) => taxonId))]);
    const days = await this.dueDays.withFirstRoots(sql, programmeId);
    const stands = [...new Map(rows.flatMap(({ standId, taxonId }) => (standId === null ? [] : [[`${standId} ${taxonId}`, { standId, taxonId }] as const]))).values()];
    const around = await this.stuck.around(sql, programmeId, stands);
    const groups = new Map<string, [StuckRow, ...StuckRow[]]>();
    for (const row of rows) {
      const key = `${row.standId ?? ''} ${row.taxonId} ${row.stuckOn}`;
      groups.set(key, [...(groups.get(key) ?? []), row] as [StuckRow, ...StuckRow[]]);
    }
    return [...groups.values()].map((own) => opinionOfRows(own, own[0], {
      past: past.get(own[0].taxonId) ?? [],
      days: known(days.find(({ taxonId }) => taxonId === own[0].taxonId)),
      around: around.find(({ standId, taxonId }) => standId === own[0].standId && taxonId === own[0].taxonId),
    }));
  }
}
