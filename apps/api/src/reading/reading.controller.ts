import { Controller, Get, Header, Param, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { Diversity, DonorHoldings, DonorsAtRisk, FunnelQuery, Funnels, ProgrammePath, ReadingChoices, ReadingFilter, ReadingPart } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { diversityAsCsv, donorsAsCsv, funnelsAsCsv } from './reading-csv.ts';
import { ReadingService } from './reading.service.ts';

const CSV = 'text/csv; charset=utf-8; header=present';

@Controller('programmes/:programme/readings')
export class ReadingController {
  constructor(private readonly readings: ReadingService) {}

  /** Plants and donors side by side, stage by stage, for each group of the chosen stickings; the next part stands in `Link`. */
  @Get('funnels')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Funnels })
  async funnels(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: FunnelQuery }) query: FunnelQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Funnels> {
    const { part, ...head } = await this.readings.funnels(caller, query);
    return { ...head, groups: answerPart(part, request, reply) };
  }

  @Get('funnels.csv')
  @Allow(...MEMBERS, 'partner')
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="funnels.csv"')
  async funnelsCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: FunnelQuery }) query: FunnelQuery, @TheCaller() caller: Caller): Promise<string> {
    const { part, ...head } = await this.readings.funnels(caller, { ...query, limit: Infinity });
    return funnelsAsCsv({ ...head, groups: part.items });
  }

  /** Donors at every stage, one stand and species at a time. */
  @Get('diversity')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Diversity })
  diversity(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<Diversity> {
    return this.readings.diversity(caller, filter);
  }

  @Get('diversity.csv')
  @Allow(...MEMBERS, 'partner')
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="diversity.csv"')
  async diversityCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    return diversityAsCsv(await this.readings.diversity(caller, filter));
  }

  /** Donors that may be lost soon, the most pressing first; the next part stands in `Link`. */
  @Get('donors-at-risk')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DonorsAtRisk })
  async atRisk(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: ReadingPart }) query: ReadingPart,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<DonorsAtRisk> {
    const { part, ...head } = await this.readings.atRisk(caller, query);
    return { ...head, donors: answerPart(part, request, reply) };
  }

  @Get('donors-at-risk.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="donors-at-risk.csv"')
  async atRiskCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    const { part, asOf } = await this.readings.atRisk(caller, filter);
    return donorsAsCsv(part.items, asOf);
  }

  /** Every donor, fewest rooted plants first; the next part stands in `Link`. */
  @Get('donors')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DonorHoldings })
  async holdings(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: ReadingPart }) query: ReadingPart,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<DonorHoldings> {
    const { part, ...head } = await this.readings.holdings(caller, query);
    return { ...head, donors: answerPart(part, request, reply) };
  }

  @Get('donors.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="donors.csv"')
  async holdingsCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    const { part, asOf } = await this.readings.holdings(caller, filter);
    return donorsAsCsv(part.items, asOf);
  }

  /** What the filters of a reading can be set to. */
  @Get('choices')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: ReadingChoices })
  choices(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<ReadingChoices> {
    return this.readings.choices(caller);
  }
}
