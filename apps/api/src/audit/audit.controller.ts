import { Controller, Get, Param, Query, Req, Res, SerializeOptions } from '@nestjs/common';
import { AuditRow, PageQuery, ProgrammePath } from '@sprigline/contract';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Database } from '../database/database.ts';
import { type Caller, TheCaller } from '../http/caller.ts';
import { answerPart, keysAfter, partOf } from '../http/part-of-list.ts';
import { Allow } from '../http/rule.ts';
import { AuditQueries } from './audit.queries.ts';

@Controller('programmes/:programme/audit')
export class AuditController {
  constructor(
    private readonly database: Database,
    private readonly audit: AuditQueries,
  ) {}

  /** Who did what to records and rights, newest first. */
  @Get()
  @Allow('owner')
  @SerializeOptions({ schema: AuditRow.array() })
  async list(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Query({ schema: PageQuery }) { after, limit }: PageQuery,
    @TheCaller() caller: Caller,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<AuditRow[]> {
    const from = keysAfter(after, 2);
    const rows = await this.database.inTransaction(caller, (sql) => this.audit.list(sql, caller.programmeId, from, limit + 1));
    return answerPart(partOf(rows, limit, ({ at, id }) => [at, id]), request, reply);
  }
}
