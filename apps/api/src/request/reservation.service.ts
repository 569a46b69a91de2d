import { Injectable } from '@nestjs/common';
import type { PlantRequest, RequestPlants } from '@sprigline/contract';
import { DomainError, pickPlants } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import { lock } from '../entry/pages/locks.queries.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { PlantsQueries, type SupplyRow } from './plants.queries.ts';
import { refuseIfGone } from './refuse-if-gone.ts';
import { RequestQueries } from './request.queries.ts';

@Injectable()
export class ReservationService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
    private readonly requests: RequestQueries,
    private readonly supplies: PlantsQueries,
  ) {}

  /** @throws DomainError `record/unknown` */
  plants(caller: Caller, id: string): Promise<RequestPlants> {
    return this.database.inTransaction(caller, async (sql) => {
      const request = await this.requests.one(sql, caller.programmeId, id);
      return picked(request, await this.supplies.supplies(sql, caller.programmeId, request));
    });
  }

  /**
   * Whoever books on these batches at the same moment waits, so that no plant is promised twice.
   *
   * @throws DomainError `record/unknown`, `http/version-stale`, `request/gone-already`, `request/withdrawn`, `request/does-not-fit`, `request/more-than-free`
   */
  setAside(caller: Caller, id: string, lines: PlantRequest['setAside'], seen: string): Promise<PlantRequest> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      await lock(sql, programmeId, lines.map(({ batchId }) => batchId));
      const request = await this.requests.one(sql, programmeId, id, true);
      refuseIfStale(seen, request);
      refuseIfGone(request);
      if (request.state === 'withdrawn') throw new DomainError('request/withdrawn', 'take it up again first');
      refuseWhatIsNotFree(lines, await this.supplies.supplies(sql, programmeId, request));
      await this.requests.replaceReservations(sql, programmeId, id, lines);
      await this.trail.note(sql, caller, { act: 'set-aside', kind: 'request', id }, { before: request.setAside, now: lines });
      return this.requests.one(sql, programmeId, id);
    });
  }
}

const NOTHING: ReturnType<typeof pickPlants> = { lines: [], plants: 0, short: 0, donors: 0, stops: 0, isShortestProven: true };

/** A line may stay as it is although plants have died since: that is shown as short, and not hidden by a refusal. */
function refuseWhatIsNotFree(lines: PlantRequest['setAside'], supplies: readonly SupplyRow[]): void {
  for (const { batchId, n } of lines) {
    const supply = supplies.find((one) => one.batchId === batchId);
    if (!supply) throw new DomainError('request/does-not-fit', 'it is of another species, stage or stand, or stands in other hands', { batchId });
    if (n > Math.max(supply.free, supply.reserved)) {
      throw new DomainError('request/more-than-free', `of ${supply.label ?? 'that batch'} only ${supply.free} are free`, { free: supply.free, asked: n });
    }
  }
}

/**
 * The pick takes what is not held and of a known donor tree, as if nothing were set aside for this request yet.
 * Of a request that is over nothing is picked: its plants have gone, or nobody wants them any more.
 */
function picked({ plants, mostPerDonor, state }: PlantRequest, rows: readonly SupplyRow[]): RequestPlants {
  const fit = rows.flatMap(({ batchId, donor, free, held, place }) => (donor === null || held ? [] : [{ batchId, donor, free, stop: place.id }]));
  const isOver = state === 'gone' || state === 'withdrawn';
  const { lines, ...pick } = isOver ? NOTHING : pickPlants({ plants, mostPerDonor: mostPerDonor ?? undefined }, fit, [...new Set(rows.map(({ place }) => place.id))]);
  const proposed = new Map(lines.map(({ batchId, n }) => [batchId, n]));
  return {
    supplies: rows.map(({ donor: _, ...supply }) => ({ ...supply, proposed: proposed.get(supply.batchId) ?? 0 })),
    pick,
    donorsThere: new Set(fit.filter(({ free }) => free > 0).map(({ donor }) => donor)).size,
  };
}
