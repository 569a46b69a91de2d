import { Controller, Get, Header, Param, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { ProgrammePath, ReadingFilter, ReadingLines, ReadingPart, SiteLines, SiteReading, ThingPath, TimeAxis } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { linesAsCsv, siteAsCsv, sitesAsCsv, timeAxisAsCsv } from './dashboard-csv.ts';
import { DashboardService } from './dashboard.service.ts';

const CSV = 'text/csv; charset=utf-8; header=present';

@Controller('programmes/:programme/readings')
export class DashboardController {
  constructor(private readonly dashboards: DashboardService) {}

  /** A line for each stand and species, those that need eyes first; the next part stands in `Link`. */
  @Get('lines')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: ReadingLines })
  async lines(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: ReadingPart }) query: ReadingPart,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<ReadingLines> {
    const { part, ...head } = await this.dashboards.lines(caller, query);
    return { ...head, lines: answerPart(part, request, reply) };
  }

  /** All lines at once. */
  @Get('lines.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="stands.csv"')
  async linesCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    const { part, asOf } = await this.dashboards.lines(caller, { ...filter, limit: Infinity });
    return linesAsCsv(part.items, asOf);
  }

  /** Plants at each stage over time, with rounds and incidents. */
  @Get('time-axis')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: TimeAxis })
  timeAxis(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<TimeAxis> {
    return this.dashboards.timeAxis(caller, filter);
  }

  @Get('time-axis.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="plants-over-time.csv"')
  async timeAxisCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    return timeAxisAsCsv(await this.dashboards.timeAxis(caller, filter));
  }

  /** All planting sites, in walking order. */
  @Get('sites')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: SiteLines })
  sites(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<SiteLines> {
    return this.dashboards.sites(caller, filter);
  }

  @Get('sites.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="sites.csv"')
  async sitesCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    return sitesAsCsv(await this.dashboards.sites(caller, filter));
  }

  /** One planting site: what was planted and how it fares, by stand, by donor tree, and check by check. */
  @Get('sites/:id')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: SiteReading })
  site(@Param({ schema: ThingPath }) { id }: ThingPath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<SiteReading> {
    return this.dashboards.site(caller, id, filter);
  }

  /** Its donor trees, a line each. */
  @Get('sites/:id/donors.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="site.csv"')
  async siteCsv(@Param({ schema: ThingPath }) { id }: ThingPath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    return siteAsCsv(await this.dashboards.site(caller, id, filter, Infinity));
  }
}
