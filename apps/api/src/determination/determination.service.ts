import { Injectable } from '@nestjs/common';
import type { DeterminationEffects, Determinations, NewDetermination } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { lock } from '../entry/pages/locks.queries.ts';
import type { Caller } from '../http/caller.ts';
import { effectsOf } from './effects.queries.ts';
import { reachOf } from './reach.queries.ts';
import { followDeterminations, isWrittenSo, saidOf, writeDetermination } from './determination.queries.ts';

@Injectable()
export class DeterminationService {
  constructor(private readonly database: Database) {}

  /** @throws DomainError `record/unknown` */
  said(caller: Caller, stickingId: string): Promise<Determinations> {
    return this.database.inTransaction(caller, (sql) => saidOf(sql, caller.programmeId, stickingId));
  }

  /** @throws DomainError `record/unknown`, `record/no-such-donor-tree` */
  effects(caller: Caller, stickingId: string, donorTreeId: string | undefined): Promise<DeterminationEffects> {
    return this.database.inTransaction(caller, (sql) => effectsOf(sql, caller.programmeId, stickingId, donorTreeId));
  }

  /**
   * Says of which donor tree a sticking is, and with it what was stuck again or cut
   * from it since: they are copies of the same tree.
   *
   * @throws DomainError `record/unknown`, `record/no-such-donor-tree`
   * @throws DomainError `record/id-reused` when the id stands for another determination
   */
  determine(caller: Caller, stickingId: string, determination: NewDetermination): Promise<Determinations> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      await this.#hold(sql, programmeId, stickingId);
      const isNew = await writeDetermination(sql, caller, stickingId, determination);
      if (!isNew && !(await isWrittenSo(sql, caller, stickingId, determination))) {
        throw new DomainError('record/id-reused', 'that id was used for another determination: make a new one');
      }
      if (isNew) await followDeterminations(sql, programmeId, stickingId);
      return saidOf(sql, programmeId, stickingId);
    });
  }

  /** Whoever logs on these batches meanwhile waits: what partners may see of them follows from the donor tree. */
  async #hold(sql: UnitOfWork, programmeId: string, stickingId: string): Promise<void> {
    const ids = await reachOf(sql, programmeId, stickingId);
    if (ids.length === 0) throw new DomainError('record/unknown', 'no sticking has this id', { id: stickingId });
    await lock(sql, programmeId, ids);
  }
}
