import { Injectable } from '@nestjs/common';
import type { WalkingOrder } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { PrismaDoor } from '../database/prisma-door.ts';
import { RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';

/** In which order places are walked that lie side by side. */
@Injectable()
export class WalkService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
  ) {}

  /**
   * Numbers them anew, from 1. All that are in use have to be named, so that nobody puts
   * into order what they did not see; those out of use come last.
   *
   * @throws DomainError `place/other-neighbours`
   */
  order(caller: Caller, { parentId, placeIds }: WalkingOrder): Promise<void> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const there = await records.place.findMany({ where: { programmeId, parentId }, select: { id: true, walkOrder: true, closedOn: true }, orderBy: [{ walkOrder: 'asc' }, { name: 'asc' }] });
      const named = new Set(placeIds);
      const known = new Set(there.map(({ id }) => id));
      if (named.size !== placeIds.length || there.some(({ id, closedOn }) => closedOn === null && !named.has(id)) || placeIds.some((id) => !known.has(id))) {
        throw new DomainError('place/other-neighbours', 'name every place that lies there once, and no other');
      }
      const inOrder = [...placeIds, ...there.filter(({ id }) => !named.has(id)).map(({ id }) => id)];
      const before = new Map(there.map(({ id, walkOrder }) => [id, walkOrder]));
      for (const [at, id] of inOrder.entries()) {
        const walkOrder = at + 1;
        if (before.get(id) === walkOrder) continue;
        await records.place.update({ where: { programmeId_id: { programmeId, id } }, data: { walkOrder } });
        await this.trail.changed(records, caller, 'place', id, { before: { walkOrder: before.get(id) ?? 0 } });
      }
    });
  }
}
