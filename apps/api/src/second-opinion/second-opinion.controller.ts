import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { SecondOpinion, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { SecondOpinionService } from './second-opinion.service.ts';

@Controller('programmes/:programme')
export class SecondOpinionController {
  constructor(private readonly opinions: SecondOpinionService) {}

  /** What is unusual about all that was stuck of a trip, why, and what others got; it warns and never blocks. */
  @Get('trips/:id/second-opinion')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: SecondOpinion })
  ofTrip(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<SecondOpinion> {
    return this.opinions.on(caller, 'trip', id);
  }

  /** What is unusual about one sticking, why, and what others got; it warns and never blocks. */
  @Get('stickings/:id/second-opinion')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: SecondOpinion })
  ofSticking(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<SecondOpinion> {
    return this.opinions.on(caller, 'sticking', id);
  }
}
