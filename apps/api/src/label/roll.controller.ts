import { Body, Controller, Get, Header, Param, Post, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { LabelRoll, LabelRollInList, LabelRollQuery, NewLabelRoll, ProgrammePath, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { csvOf } from '../http/csv.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { LabelService } from './label.service.ts';

@Controller('programmes/:programme/label-rolls')
export class LabelRollController {
  constructor(private readonly labels: LabelService) {}

  /** Rolls of codes, the newest first, in parts; the next part stands in `Link`. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LabelRollInList.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: LabelRollQuery }) query: LabelRollQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<LabelRollInList[]> {
    return answerPart(await this.labels.listRolls(caller, query), request, reply);
  }

  /** Draws codes that were never drawn in the programme before. Sending it twice draws once. */
  @Post()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LabelRoll })
  make(@Param({ schema: ProgrammePath }) _: ProgrammePath, @Body({ schema: NewLabelRoll }) roll: NewLabelRoll, @TheCaller() caller: Caller): Promise<LabelRoll> {
    return this.labels.makeRoll(caller, roll);
  }

  /** Its codes along the roll, and what each became. */
  @Get(':id')
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: LabelRoll })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<LabelRoll> {
    return this.labels.roll(caller, id);
  }

  /** The same for a spreadsheet. */
  @Get(':id/codes.csv')
  @Allow(...MEMBERS)
  @Header('content-type', 'text/csv; charset=utf-8; header=present')
  @Header('content-disposition', 'attachment; filename="label-roll.csv"')
  async csv(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<string> {
    const { codes } = await this.labels.roll(caller, id);
    return csvOf(['number', 'code', 'is on', 'id', 'since (UTC)'], codes.map(({ number, code, on }) => [number, code, on?.is, on?.id, on?.givenAt]));
  }
}
