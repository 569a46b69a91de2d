import { Body, Controller, Delete, Get, Header, HttpCode, Param, Post, Put, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { NewPlan, NewPlanTarget, Plan, PlanContent, PlanInList, PlanQuery, PlanTargetContent, PlanTargetPath, ProgrammePath, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { planAsCsv } from './plan-csv.ts';
import { PlanService } from './plan.service.ts';

@Controller('programmes/:programme/plans')
export class PlanController {
  constructor(private readonly plans: PlanService) {}

  /** The newest season first, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: PlanInList.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: PlanQuery }) query: PlanQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<PlanInList[]> {
    return answerPart(await this.plans.list(caller, query), request, reply);
  }

  /** Its targets, and for each what to stick, tree by tree, as worked out on the day of its figures. */
  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Plan })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Plan> {
    return this.plans.one(caller, id);
  }

  /** What to stick, a line a donor tree. */
  @Get(':id/trees.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="plan.csv"')
  async csv(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<string> {
    return planAsCsv(await this.plans.one(caller, id));
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Plan })
  make(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: NewPlan }) plan: NewPlan, @TheCaller() caller: Caller): Promise<Plan> {
    return this.plans.make(caller, plan);
  }

  /** Needs If-Match. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Plan })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: PlanContent }) content: PlanContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Plan> {
    return this.plans.change(caller, id, content, seen);
  }

  /** Adds a target and works out what to stick for it. Sending it twice makes it once. */
  @Post(':id/targets')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Plan })
  addTarget(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: NewPlanTarget }) target: NewPlanTarget, @TheCaller() caller: Caller): Promise<Plan> {
    return this.plans.addTarget(caller, id, target);
  }

  /** Sets another target, or the same: it is worked out anew from the figures of today. Needs If-Match of the plan. */
  @Put(':id/targets/:targetId')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Plan })
  changeTarget(
    @Param({ schema: PlanTargetPath }) { id, targetId }: PlanTargetPath,
    @Body({ schema: PlanTargetContent }) target: PlanTargetContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Plan> {
    return this.plans.changeTarget(caller, id, targetId, target, seen);
  }

  @Delete(':id/targets/:targetId')
  @Allow(...DESK)
  @HttpCode(204)
  removeTarget(@Param({ schema: PlanTargetPath }) { id, targetId }: PlanTargetPath, @TheCaller() caller: Caller): Promise<void> {
    return this.plans.removeTarget(caller, id, targetId);
  }
}
