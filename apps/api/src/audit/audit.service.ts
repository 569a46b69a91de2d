import { Injectable } from '@nestjs/common';
import type { AuditRow, PageQuery } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import { AuditQueries } from './audit.queries.ts';

@Injectable()
export class AuditService {
  constructor(
    private readonly database: Database,
    private readonly queries: AuditQueries,
  ) {}

  /** @throws DomainError `http/bad-cursor` */
  async list(caller: Caller, { after, limit }: PageQuery): Promise<Part<AuditRow>> {
    const from = keysAfter(after, 2);
    const rows = await this.database.inTransaction(caller, (sql) => this.queries.list(sql, caller.programmeId, from, limit + 1));
    return partOf(rows, limit, ({ at, id }) => [at, id]);
  }
}
