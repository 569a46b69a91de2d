import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { PermissionEnding, ProgrammePath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { PermissionEndingQueries } from './permission-ending.queries.ts';

@Controller('programmes/:programme/permissions')
export class PermissionEndingController {
  constructor(private readonly permissions: PermissionEndingQueries) {}

  /** Needs the grant *see exact places*. Those that end within 60 days, or of which nine tenths are used. */
  @Get('ending')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: PermissionEnding.array() })
  ending(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<PermissionEnding[]> {
    return this.permissions.ending(caller);
  }
}
