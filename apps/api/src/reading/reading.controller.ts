import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { Diversity, DonorHoldings, DonorsAtRisk, FunnelQuery, Funnels, ProgrammePath, ReadingChoices, ReadingFilter } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { atRiskAsCsv, diversityAsCsv, funnelsAsCsv, holdingsAsCsv } from './reading-csv.ts';
import { ReadingService } from './reading.service.ts';

const CSV = 'text/csv; charset=utf-8; header=present';

@Controller('programmes/:programme/readings')
export class ReadingController {
  constructor(private readonly readings: ReadingService) {}

  /** Plants and donors side by side, stage by stage, for each group of the chosen stickings. */
  @Get('funnels')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Funnels })
  funnels(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: FunnelQuery }) query: FunnelQuery, @TheCaller() caller: Caller): Promise<Funnels> {
    return this.readings.funnels(caller, query);
  }

  @Get('funnels.csv')
  @Allow(...MEMBERS, 'partner')
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="funnels.csv"')
  async funnelsCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: FunnelQuery }) query: FunnelQuery, @TheCaller() caller: Caller): Promise<string> {
    return funnelsAsCsv(await this.readings.funnels(caller, query));
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

  /** Donors that may be lost soon, the most pressing first. */
  @Get('donors-at-risk')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DonorsAtRisk })
  atRisk(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<DonorsAtRisk> {
    return this.readings.atRisk(caller, filter);
  }

  @Get('donors-at-risk.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="donors-at-risk.csv"')
  async atRiskCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    return atRiskAsCsv(await this.readings.atRisk(caller, filter));
  }

  /** Every donor, fewest rooted plants first. */
  @Get('donors')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DonorHoldings })
  holdings(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<DonorHoldings> {
    return this.readings.holdings(caller, filter);
  }

  @Get('donors.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="donors.csv"')
  async holdingsCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: ReadingFilter }) filter: ReadingFilter, @TheCaller() caller: Caller): Promise<string> {
    return holdingsAsCsv(await this.readings.holdings(caller, filter));
  }

  /** What the filters of a reading can be set to. */
  @Get('choices')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: ReadingChoices })
  choices(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<ReadingChoices> {
    return this.readings.choices(caller);
  }
}
