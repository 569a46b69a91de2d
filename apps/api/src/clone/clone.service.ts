import { Injectable } from '@nestjs/common';
import type { CloneGroup, NewCloneStatement, NewSighting, Sighting } from '@sprigline/contract';
import { cloneGroups, DomainError } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { lock } from '../entry/pages/locks.queries.ts';
import type { Caller } from '../http/caller.ts';
import { groupOf, groupTrees, pairsOf, writeStatement } from './clone.queries.ts';
import { sightingsOf, writeSighting } from './sighting.queries.ts';

/** What is said of donor trees themselves, and what follows from the last that was said. */
@Injectable()
export class CloneService {
  constructor(private readonly database: Database) {}

  /** @throws DomainError `record/unknown` */
  group(caller: Caller, treeId: string): Promise<CloneGroup> {
    return this.database.inTransaction(caller, (sql) => groupOf(sql, caller.programmeId, treeId));
  }

  /**
   * @throws DomainError `clone/of-itself`, `clone/other-species`, `record/unknown`, `record/no-such-donor-tree`, `record/id-reused`
   */
  state(caller: Caller, treeId: string, statement: NewCloneStatement): Promise<CloneGroup> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      if (treeId === statement.otherTreeId) throw new DomainError('clone/of-itself', 'name two trees: a tree is always one clone with itself');
      // Groups follow from all statements: one after the other.
      await lock(sql, programmeId, ['clone statements']);
      await writeStatement(sql, caller, treeId, statement);
      const pairs = await pairsOf(sql, programmeId);
      const named = new Set(pairs.flatMap(({ tree, other }) => [tree, other]));
      const groups = cloneGroups(pairs.filter(({ isSame }) => isSame));
      await groupTrees(sql, programmeId, [...named].map((id) => ({ id, groupId: groups.get(id) ?? null })));
      return groupOf(sql, programmeId, treeId);
    });
  }

  /** @throws DomainError `record/unknown` */
  sightings(caller: Caller, treeId: string): Promise<Sighting[]> {
    return this.database.inTransaction(caller, (sql) => sightingsOf(sql, caller.programmeId, treeId));
  }

  /** @throws DomainError `record/unknown`, `record/id-reused` */
  see(caller: Caller, treeId: string, sighting: NewSighting): Promise<Sighting[]> {
    return this.database.inTransaction(caller, async (sql) => {
      await writeSighting(sql, caller, treeId, sighting);
      return sightingsOf(sql, caller.programmeId, treeId);
    });
  }
}
