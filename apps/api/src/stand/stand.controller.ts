import { Body, Controller, Get, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { NewStand, ProgrammePath, Stand, StandContent, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { StandService } from './stand.service.ts';

@Controller('programmes/:programme/stands')
export class StandController {
  constructor(private readonly stands: StandService) {}

  /** All stands of the programme, by name. */
  @Get()
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Stand.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Stand[]> {
    return this.stands.list(caller);
  }

  @Get(':id')
  @Allow(...MEMBERS, 'partner')
  @Tagged()
  @SerializeOptions({ schema: Stand })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Stand> {
    return this.stands.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Stand })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewStand }) stand: NewStand,
    @TheCaller() caller: Caller,
  ): Promise<Stand> {
    return this.stands.make(caller, stand);
  }

  /** Needs If-Match. Another sensitivity cuts the cells of its trees anew. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Stand })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: StandContent }) content: StandContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Stand> {
    return this.stands.change(caller, id, content, seen);
  }
}
