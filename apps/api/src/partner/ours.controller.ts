import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { Ours, ProgrammePath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow } from '../http/rule.ts';
import { OursQueries } from './ours.queries.ts';

@Controller('programmes/:programme/ours')
export class OursController {
  constructor(private readonly queries: OursQueries) {}

  /** What concerns the partner who asks. */
  @Get()
  @Allow('partner')
  @SerializeOptions({ schema: Ours })
  ours(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Ours> {
    return this.queries.ours(caller);
  }
}
