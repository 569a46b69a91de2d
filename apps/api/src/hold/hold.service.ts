import { Injectable } from '@nestjs/common';
import type { HoldShown, PossibleSticking } from '@sprigline/contract';
import { Database } from '../database/database.ts';
import type { Caller } from '../http/caller.ts';
import { holdsOf, possibleStickings } from './hold.queries.ts';

@Injectable()
export class HoldService {
  constructor(private readonly database: Database) {}

  list(caller: Caller): Promise<HoldShown[]> {
    return this.database.inTransaction(caller, (sql) => holdsOf(sql, caller.programmeId));
  }

  possibleStickings(caller: Caller, batchId: string): Promise<PossibleSticking[]> {
    return this.database.inTransaction(caller, (sql) => possibleStickings(sql, caller.programmeId, batchId));
  }
}
