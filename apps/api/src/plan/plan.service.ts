import { Injectable } from '@nestjs/common';
import type { NewPlan, NewPlanTarget, Plan, PlanContent, PlanInList, PlanQuery, PlanTargetContent } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import { known } from '../database/known.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { DueDaysQueries } from '../due/due-days.queries.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import type { Part } from '../http/part-of-list.ts';
import { PastQueries } from '../second-opinion/past.queries.ts';
import { answerOfFigures } from './answer-of-figures.ts';
import { FiguresQueries } from './figures.queries.ts';
import { PlanQueries, type TargetRow } from './plan.queries.ts';

/** What is to be stuck next season. The answer is kept beside its targets, with the day of its figures. */
@Injectable()
export class PlanService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
    private readonly plans: PlanQueries,
    private readonly figures: FiguresQueries,
    private readonly past: PastQueries,
    private readonly dueDays: DueDaysQueries,
  ) {}

  list(caller: Caller, query: PlanQuery): Promise<Part<PlanInList>> {
    return this.database.inTransaction(caller, (sql) => this.plans.list(sql, caller.programmeId, query));
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Plan> {
    return this.database.inTransaction(caller, (sql) => this.#one(sql, caller, id));
  }

  /** @throws DomainError `record/id-reused` */
  make(caller: Caller, plan: NewPlan): Promise<Plan> {
    return this.database.inTransaction(caller, async (sql) => {
      if (await this.trail.isNew(sql, caller, 'plan', plan, 'record/id-reused')) await this.plans.insert(sql, caller.programmeId, caller.personId, plan);
      return this.#one(sql, caller, plan.id);
    });
  }

  /** @throws DomainError `record/unknown`, `http/version-stale` */
  change(caller: Caller, id: string, content: PlanContent, seen: string): Promise<Plan> {
    return this.database.inTransaction(caller, async (sql) => {
      const earlier = await this.#one(sql, caller, id);
      refuseIfStale(seen, earlier);
      await this.plans.update(sql, caller.programmeId, id, content);
      const { name, season, note } = earlier;
      await this.trail.note(sql, caller, { act: 'changed', kind: 'plan', id }, { before: { name, season, note } });
      return this.#one(sql, caller, id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/id-reused`, `plan/no-trees`, `record/no-such-…` for whatever it names that is not there */
  addTarget(caller: Caller, planId: string, { id, ...target }: NewPlanTarget): Promise<Plan> {
    return this.database.inTransaction(caller, async (sql) => {
      await this.#one(sql, caller, planId);
      if (await this.trail.isNew(sql, caller, 'plan-target', { id, planId, ...target }, 'record/id-reused')) {
        await this.plans.insertTarget(sql, caller.programmeId, planId, id, await this.#workedOut(sql, caller, target));
      }
      return this.#one(sql, caller, planId);
    });
  }

  /**
   * Sets another target, or the same: either way it is worked out anew from the figures of today.
   *
   * @throws DomainError `record/unknown`, `http/version-stale`, `plan/no-trees`, `record/no-such-…`
   */
  changeTarget(caller: Caller, planId: string, id: string, target: PlanTargetContent, seen: string): Promise<Plan> {
    return this.database.inTransaction(caller, async (sql) => {
      const plan = await this.#one(sql, caller, planId);
      const { answer: _, ...earlier } = known(plan.targets.find((one) => one.id === id));
      refuseIfStale(seen, plan);
      await this.plans.updateTarget(sql, caller.programmeId, id, await this.#workedOut(sql, caller, target));
      await this.trail.note(sql, caller, { act: 'changed', kind: 'plan-target', id }, { before: earlier });
      return this.#one(sql, caller, planId);
    });
  }

  /** @throws DomainError `record/unknown` */
  removeTarget(caller: Caller, planId: string, id: string): Promise<void> {
    return this.database.inTransaction(caller, async (sql) => {
      known((await this.plans.removeTarget(sql, caller.programmeId, planId, id)) || undefined);
      await this.trail.note(sql, caller, { act: 'removed', kind: 'plan-target', id }, { planId });
    });
  }

  async #workedOut(sql: UnitOfWork, { programmeId }: Caller, target: PlanTargetContent): Promise<TargetRow> {
    const figures = await this.figures.of(sql, programmeId, target);
    const days = (await this.dueDays.withFirstRoots(sql, programmeId)).find(({ taxonId }) => taxonId === target.taxonId);
    if (!days) throw new DomainError('record/no-such-taxon', 'choose a species of this programme');
    const past = (await this.past.ofTaxa(sql, programmeId, [target.taxonId])).get(target.taxonId) ?? [];
    return { ...target, answer: answerOfFigures(target, { figures, past, days }), figuresOn: figures.today };
  }

  async #one(sql: UnitOfWork, { programmeId }: Caller, id: string): Promise<Plan> {
    return known(await this.plans.one(sql, programmeId, id));
  }
}
