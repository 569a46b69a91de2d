import { Injectable } from '@nestjs/common';
import type { NewRequest, PlantRequest, RequestContent, RequestInList, RequestQuery, RequestStateBody } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { inOrder, refuseIfStale } from '../http/etag.ts';
import type { Part } from '../http/part-of-list.ts';
import { refuseIfGone } from './refuse-if-gone.ts';
import { RequestQueries } from './request.queries.ts';

@Injectable()
export class RequestService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
    private readonly requests: RequestQueries,
  ) {}

  list(caller: Caller, query: RequestQuery): Promise<Part<RequestInList>> {
    return this.database.inTransaction(caller, (sql) => this.requests.list(sql, caller.programmeId, query));
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<PlantRequest> {
    return this.database.inTransaction(caller, (sql) => this.requests.one(sql, caller.programmeId, id));
  }

  /** @throws DomainError `record/id-reused`, `request/not-a-site`, `record/no-such-…` for whatever it names that is not there */
  make(caller: Caller, request: NewRequest): Promise<PlantRequest> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      if (await this.trail.isNew(sql, caller, 'request', request, 'record/id-reused')) {
        await this.#refuseOtherPlaces(sql, programmeId, request);
        await this.requests.insert(sql, programmeId, request.id, request);
      }
      return this.requests.one(sql, programmeId, request.id);
    });
  }

  /**
   * While plants are set aside the request may not ask for others: they would be set aside for nothing.
   *
   * @throws DomainError `record/unknown`, `http/version-stale`, `request/gone-already`, `request/plants-set-aside`, `request/not-a-site`
   */
  change(caller: Caller, id: string, content: RequestContent, seen: string): Promise<PlantRequest> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      const earlier = await this.requests.one(sql, programmeId, id, true);
      refuseIfStale(seen, earlier);
      refuseIfGone(earlier);
      if (earlier.setAside.length > 0 && whatOf(earlier) !== whatOf(content)) {
        throw new DomainError('request/plants-set-aside', 'put them back first, then ask for other plants', { batches: earlier.setAside.length });
      }
      await this.#refuseOtherPlaces(sql, programmeId, content);
      await this.requests.update(sql, programmeId, id, content);
      await this.trail.note(sql, caller, { act: 'changed', kind: 'request', id }, { before: earlier });
      return this.requests.one(sql, programmeId, id);
    });
  }

  /** @throws DomainError `record/unknown`, `http/version-stale`, `request/gone-already`, `request/nothing-set-aside` */
  changeState(caller: Caller, id: string, state: RequestStateBody['state'], seen: string): Promise<PlantRequest> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      const earlier = await this.requests.one(sql, programmeId, id, true);
      refuseIfStale(seen, earlier);
      refuseIfGone(earlier);
      if (state === 'packed' && earlier.setAside.length === 0) throw new DomainError('request/nothing-set-aside', 'set plants aside first, then pack them');
      if (state === 'withdrawn') await this.requests.replaceReservations(sql, programmeId, id, []);
      await this.requests.setState(sql, programmeId, id, state);
      await this.trail.note(sql, caller, { act: state === 'withdrawn' ? 'withdrawn' : 'changed', kind: 'request', id }, { before: earlier, state });
      return this.requests.one(sql, programmeId, id);
    });
  }

  async #refuseOtherPlaces(sql: UnitOfWork, programmeId: string, { placeId }: RequestContent): Promise<void> {
    if (placeId === null || (await this.requests.isSite(sql, programmeId, placeId)) !== false) return;
    throw new DomainError('request/not-a-site', 'name a site or a plot, or none where the plants are handed over');
  }
}

const whatOf = ({ taxonId, stage, standIds }: RequestContent): string => inOrder({ taxonId, stage, standIds: [...standIds].sort() });
