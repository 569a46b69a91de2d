import { Controller, Get, Param, SerializeOptions } from '@nestjs/common';
import { Round, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { RoundQueries } from './round.queries.ts';

@Controller('programmes/:programme/places')
export class RoundController {
  constructor(private readonly rounds: RoundQueries) {}

  /** The place, then its batches in the order in which one walks past them. */
  @Get(':id/round')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Round })
  at(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Round> {
    return this.rounds.at(caller, id);
  }
}
