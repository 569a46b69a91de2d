import { Body, Controller, Get, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { NewRegime, Regime, RegimeContent, Regimes, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { RegimeService } from './regime.service.ts';

@Controller('programmes/:programme')
export class RegimeController {
  constructor(private readonly regimes: RegimeService) {}

  /** What holds at a place today, and all that was ever told for it. */
  @Get('places/:id/regimes')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Regimes })
  at(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Regimes> {
    return this.regimes.at(caller, id);
  }

  /** A new one ends the one before. Sending it twice makes it once. */
  @Post('places/:id/regimes')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Regime })
  make(@Param({ schema: ThingPath }) { id }: ThingPath, @Body({ schema: NewRegime }) regime: NewRegime, @TheCaller() caller: Caller): Promise<Regime> {
    return this.regimes.make(caller, id, regime);
  }

  @Get('regimes/:id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Regime })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Regime> {
    return this.regimes.one(caller, id);
  }

  /** For a slip; a change at the place is a new regime. Needs If-Match. */
  @Put('regimes/:id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Regime })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: RegimeContent }) content: RegimeContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Regime> {
    return this.regimes.change(caller, id, content, seen);
  }
}
