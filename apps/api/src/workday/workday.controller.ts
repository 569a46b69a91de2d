import { Body, Controller, Get, Param, Post, Put, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { NewWorkday, PageQuery, ProgrammePath, Workday, WorkdayContent, WorkdaySummary, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { WorkdayService } from './workday.service.ts';
import { WorkdaySummaryQueries } from './workday-summary.queries.ts';

@Controller('programmes/:programme/workdays')
export class WorkdayController {
  constructor(
    private readonly workdays: WorkdayService,
    private readonly summaries: WorkdaySummaryQueries,
  ) {}

  /** Newest first, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Workday.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: PageQuery }) query: PageQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Workday[]> {
    return answerPart(await this.workdays.list(caller, query), request, reply);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Workday })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Workday> {
    return this.workdays.one(caller, id);
  }

  /** The one page about a day: who was there, and what was done with each species. */
  @Get(':id/summary')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: WorkdaySummary })
  summary(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<WorkdaySummary> {
    return this.summaries.of(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Workday })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewWorkday }) workday: NewWorkday,
    @TheCaller() caller: Caller,
  ): Promise<Workday> {
    return this.workdays.make(caller, workday);
  }

  /** Needs If-Match. A volunteer may change their own. */
  @Put(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Workday })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: WorkdayContent }) content: WorkdayContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Workday> {
    return this.workdays.change(caller, id, content, seen);
  }
}
