import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { HoldShown, PossibleSticking, ProgrammePath, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { HoldService } from './hold.service.ts';

@Controller('programmes/:programme')
export class HoldController {
  constructor(private readonly holds: HoldService) {}

  /** What is held and why, with the plants that it keeps where they stand. */
  @Get('holds')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: HoldShown.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<HoldShown[]> {
    return this.holds.list(caller);
  }

  /** Stickings that plants of a mixed batch may be of, by what was mixed into it. */
  @Get('batches/:id/possible-stickings')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: PossibleSticking.array() })
  possible(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<PossibleSticking[]> {
    return this.holds.possibleStickings(caller, id);
  }
}
