import { Controller, Get, Header, Param, Query, SerializeOptions } from '@nestjs/common';
import { LeaveOrCall, LeaveOrCallQuery, ProgrammePath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { traysAsCsv } from './leave-or-call-csv.ts';
import { LeaveOrCallService } from './leave-or-call.service.ts';

@Controller('programmes/:programme/readings')
export class LeaveOrCallController {
  constructor(private readonly leaveOrCall: LeaveOrCallService) {}

  /** What waiting would bring each tray that is undecided: chances and plants, what a month of bench brings most first. No verdict. */
  @Get('leave-or-call')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LeaveOrCall })
  trays(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: LeaveOrCallQuery }) query: LeaveOrCallQuery, @TheCaller() caller: Caller): Promise<LeaveOrCall> {
    return this.leaveOrCall.trays(caller, query);
  }

  /** All of them. */
  @Get('leave-or-call.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="leave-or-call.csv"')
  async traysCsv(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Query({ schema: LeaveOrCallQuery }) query: LeaveOrCallQuery, @TheCaller() caller: Caller): Promise<string> {
    return traysAsCsv(await this.leaveOrCall.trays(caller, { ...query, limit: undefined }));
  }
}
