import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { ThingPath, TrayCards } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { TrayCardQueries } from './tray-card.queries.ts';

@Controller('programmes/:programme/trips')
export class TrayCardController {
  constructor(private readonly cards: TrayCardQueries) {}

  /** What stands on the cards of a sticking night: each bundle of the trip, what is left of it, and the trays that hold the rest. */
  @Get(':id/tray-cards')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: TrayCards })
  of(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<TrayCards> {
    return this.cards.of(caller, id);
  }
}
