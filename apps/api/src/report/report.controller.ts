import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { FunderQuery, FunderReport, HandoverReport, LandownerQuery, LandownerReport, ProgrammePath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { HandoverService } from './handover.service.ts';
import { funderAsCsv, handoverAsCsv, landownerAsCsv } from './report-csv.ts';
import { ReportService } from './report.service.ts';

const CSV = 'text/csv; charset=utf-8; header=present';

@Controller('programmes/:programme/reports')
export class ReportController {
  constructor(
    private readonly reports: ReportService,
    private readonly handovers: HandoverService,
  ) {}

  /** What came of cuttings from one stand, from a partner's land, or under one permission. */
  @Get('landowner')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LandownerReport })
  landowner(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: LandownerQuery }) asked: LandownerQuery, @TheCaller() caller: Caller): Promise<LandownerReport> {
    return this.reports.landowner(caller, asked);
  }

  @Get('landowner.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="landowner.csv"')
  async landownerCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: LandownerQuery }) asked: LandownerQuery, @TheCaller() caller: Caller): Promise<string> {
    return landownerAsCsv(await this.reports.landowner(caller, asked));
  }

  /** Trees planted out and how many live, by site, season of planting and species. */
  @Get('funder')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: FunderReport })
  funder(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: FunderQuery }) asked: FunderQuery, @TheCaller() caller: Caller): Promise<FunderReport> {
    return this.reports.funder(caller, asked);
  }

  @Get('funder.csv')
  @Allow(...MEMBERS)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="funder.csv"')
  async funderCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: FunderQuery }) asked: FunderQuery, @TheCaller() caller: Caller): Promise<string> {
    return funderAsCsv(await this.reports.funder(caller, asked));
  }

  /** What a new coordinator has to know today. */
  @Get('handover')
  @Allow(...DESK)
  @SerializeOptions({ schema: HandoverReport })
  handover(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<HandoverReport> {
    return this.handovers.handover(caller);
  }

  @Get('handover.csv')
  @Allow(...DESK)
  @Header('content-type', CSV)
  @Header('content-disposition', 'attachment; filename="handover.csv"')
  async handoverCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<string> {
    return handoverAsCsv(await this.handovers.handover(caller));
  }
}
