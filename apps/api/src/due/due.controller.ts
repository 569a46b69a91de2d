import { Body, Controller, Get, HttpCode, Param, Post, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { DueItem, DuePlaces, DuePlacesQuery, DueQuery, NewPutOff, ProgrammePath, TaxonDays } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { DueService } from './due.service.ts';

@Controller('programmes/:programme/due')
export class DueController {
  constructor(private readonly due: DueService) {}

  /** What is due by a day (left out: today), the nearest day first, then in walking order, in parts. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DueItem.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: DueQuery }) query: DueQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<DueItem[]> {
    return answerPart(await this.due.list(caller, query), request, reply);
  }

  /** The same by the place that one walks: how much is due there, and from which day on. */
  @Get('places')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: DuePlaces })
  byPlace(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: DuePlacesQuery }) query: DuePlacesQuery,
    @TheCaller() caller: Caller,
  ): Promise<DuePlaces> {
    return this.due.byPlace(caller, query);
  }

  /** Days from sticking of each species: written down, from the programme's own history, or Sprigline's default. */
  @Get('days')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: TaxonDays.array() })
  days(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<TaxonDays[]> {
    return this.due.daysOfTaxa(caller);
  }

  /** Not now, but on that day. Sending it twice puts it off once. */
  @Post('put-offs')
  @HttpCode(204)
  @Allow(...DESK)
  async putOff(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewPutOff }) putOff: NewPutOff,
    @TheCaller() caller: Caller,
  ): Promise<void> {
    await this.due.putOff(caller, putOff);
  }
}
