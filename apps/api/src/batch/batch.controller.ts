import { Controller, Get, Param, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { Batch, BatchInList, BatchQuery, Descent, ProgrammePath, ThingPath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { BatchService } from './batch.service.ts';

@Controller('programmes/:programme')
export class BatchController {
  constructor(private readonly batches: BatchService) {}

  /** The newest first, in parts; the next part stands in `Link`. A partner gets those that concern them. */
  @Get('batches')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: BatchInList.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: BatchQuery }) query: BatchQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<BatchInList[]> {
    return answerPart(await this.batches.list(caller, query), request, reply);
  }

  /** One batch: its family line, its books, its history and where it stood. */
  @Get('batches/:id')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Batch })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Batch> {
    return this.batches.one(caller, id);
  }

  /** All that came of a donor tree. */
  @Get('donor-trees/:id/descent')
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Descent })
  descent(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Descent> {
    return this.batches.descent(caller, id);
  }
}
