import { Injectable } from '@nestjs/common';
import type { NewWorkList, WorkList, WorkListInList, WorkListQuery } from '@sprigline/contract';
import { belongsOnList, DomainError } from '@sprigline/domain';
import { isDeepStrictEqual } from 'node:util';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { DueDaysQueries } from '../due/due-days.queries.ts';
import type { Caller } from '../http/caller.ts';
import type { Part } from '../http/part-of-list.ts';
import { type Candidate, CandidateQueries } from './candidate.queries.ts';
import { WorkListQueries } from './work-list.queries.ts';

/** As many as can be typed back in one request, and more than a day's work. */
const LONGEST = 500;

@Injectable()
export class WorkListService {
  constructor(
    private readonly database: Database,
    private readonly queries: WorkListQueries,
    private readonly candidates: CandidateQueries,
    private readonly waits: DueDaysQueries,
  ) {}

  list(caller: Caller, query: WorkListQuery): Promise<Part<WorkListInList>> {
    return this.database.inTransaction(caller, (sql) => this.queries.list(sql, caller.programmeId, query));
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<WorkList> {
    return this.database.inTransaction(caller, (sql) => this.queries.one(sql, caller.programmeId, id));
  }

  /**
   * @throws DomainError `work-list/nothing-to-do` when no batch belongs on it: an empty sheet helps nobody
   * @throws DomainError `work-list/too-long`
   * @throws DomainError `record/id-reused` when the id stands for another sheet
   */
  make(caller: Caller, list: NewWorkList): Promise<WorkList> {
    return this.database.inTransaction(caller, async (sql) => {
      const earlier = await this.queries.head(sql, caller.programmeId, list.id);
      if (!earlier) {
        const chosen = await this.#chosen(sql, caller, list);
        refuseUnfitLength(chosen.length);
        await this.queries.keep(sql, caller, list, chosen.map(({ id }) => id));
      }
      const kept = await this.queries.one(sql, caller.programmeId, list.id);
      if (kept.kind !== list.kind || !isDeepStrictEqual(kept.asked, { ...list.asked })) {
        throw new DomainError('record/id-reused', 'that id was sent before with other content: make a new id for a new sheet');
      }
      return kept;
    });
  }

  /** In walking order. How long a tray is left alone, its species says, unless somebody asks otherwise. */
  async #chosen(sql: UnitOfWork, caller: Caller, list: NewWorkList): Promise<Candidate[]> {
    const { days, atMost } = list.asked;
    const which = list.kind === 'calling' ? 'verdict' : 'firstCheck';
    const waits = days === null ? await this.waits.ofTaxa(sql, caller.programmeId) : [];
    const daysOf = new Map(waits.map((wait) => [wait.taxonId, wait[which].days]));
    const candidates = await this.candidates.at(sql, caller, list);
    return candidates.filter((batch) => belongsOnList(list.kind, batch, { days: days ?? daysOf.get(batch.taxonId ?? ''), atMost: atMost ?? undefined }));
  }
}

function refuseUnfitLength(lines: number): void {
  if (lines === 0) throw new DomainError('work-list/nothing-to-do', 'no batch belongs on it: ask for another place, stand or species');
  if (lines > LONGEST) throw new DomainError('work-list/too-long', `more than ${LONGEST} batches belong on it: choose a smaller place, a stand or a species`, { lines });
}
