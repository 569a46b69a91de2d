import { Controller, Get, Param, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { Changes, ChangesQuery, ProgrammePath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow, MEMBERS } from '../http/rule.ts';
import { ChangeService } from './change.service.ts';

@Controller('programmes/:programme/changes')
export class ChangeController {
  constructor(private readonly changes: ChangeService) {}

  /**
   * What changed, the oldest first, so that nothing is missed: entries and records, each by its kind and id, to be read
   * again at its own address. Follow `Link` for ever: it always names the next part, also when nothing is new. A change
   * written by somebody slow comes later, and never slips behind. A partner is told of what is theirs now: when a stand
   * or a site becomes theirs, that is told, and its batches are read from the list; what is theirs no more is not told.
   * A key is told of what its scopes read. After a stand or a species changed, cells of its donor trees may be other ones.
   * Not told: permissions, keys, invitations, printed lists, sheets that were brought, readings of loggers.
   */
  @Get()
  @Allow(...MEMBERS, 'partner')
  @SerializeOptions({ schema: Changes })
  async since(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: ChangesQuery }) query: ChangesQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Changes> {
    const { part, isUpToDate } = await this.changes.since(caller, query);
    return { changes: answerPart(part, request, reply), isUpToDate };
  }
}
