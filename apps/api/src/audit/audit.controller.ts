import { Controller, Get, Param, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { AuditRow, PageQuery, ProgrammePath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart } from '../http/part-of-list.ts';
import { Allow } from '../http/rule.ts';
import { AuditService } from './audit.service.ts';

@Controller('programmes/:programme/audit')
export class AuditController {
  constructor(private readonly audit: AuditService) {}

  /** Who did what to records and rights, newest first; the next part stands in `Link`. */
  @Get()
  @Allow('owner')
  @SerializeOptions({ schema: AuditRow.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: PageQuery }) query: PageQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<AuditRow[]> {
    return answerPart(await this.audit.list(caller, query), request, reply);
  }
}
