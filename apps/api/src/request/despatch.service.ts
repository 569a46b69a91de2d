import { Injectable } from '@nestjs/common';
import type { Despatch, DespatchNote, NewEntry, PlantRequest, WrittenEntry } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { authorOf, LedgerWriter } from '../entry/entry.module.ts';
import { lock } from '../entry/pages/locks.queries.ts';
import type { Caller } from '../http/caller.ts';
import { DespatchQueries } from './despatch.queries.ts';
import { PlantsQueries, type SupplyRow } from './plants.queries.ts';
import { RequestQueries } from './request.queries.ts';

@Injectable()
export class DespatchService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
    private readonly ledger: LedgerWriter,
    private readonly requests: RequestQueries,
    private readonly supplies: PlantsQueries,
    private readonly despatches: DespatchQueries,
  ) {}

  /** @throws DomainError `record/unknown` while nothing has gone */
  note(caller: Caller, id: string): Promise<DespatchNote> {
    return this.database.inTransaction(caller, (sql) => this.despatches.note(sql, caller.programmeId, id));
  }

  /**
   * Writes the entries by which the plants leave, all or none, and closes the request.
   * A partner's plants arrive there unconfirmed, as the ledger has it.
   *
   * @throws DomainError `record/unknown`, `request/gone-already`, `request/withdrawn`, `request/partner-place-needed`, `request/does-not-fit`,
   *   `request/more-than-free`, and whatever the ledger answers to an entry
   */
  despatch(caller: Caller, id: string, despatch: Despatch): Promise<DespatchNote> {
    const { programmeId } = caller;
    return this.database.inTransaction(caller, async (sql) => {
      // All that the ledger locks below, so that nobody waits in a circle.
      await lock(sql, programmeId, despatch.lines.flatMap(({ entryId, batchId, toBatchId, label = [] }) => [entryId, batchId, toBatchId, label].flat()));
      const request = await this.requests.one(sql, programmeId, id, true);
      if (request.state === 'gone') {
        await this.#refuseOther(sql, caller, id, despatch);
        return this.despatches.note(sql, programmeId, id);
      }
      if (request.state === 'withdrawn') throw new DomainError('request/withdrawn', 'take it up again first');
      refuseWhatMayNotGo(despatch.lines, await this.supplies.supplies(sql, programmeId, request));

      const entries = entriesOf(request, despatch, new Date().toISOString());
      const confirm = new Set(despatch.confirm ? entries.map((entry) => entry.id) : []);
      refuseFirst(await this.ledger.write(sql, authorOf(caller), { door: 'desk', entries, confirm }));
      await this.despatches.finish(sql, programmeId, id, despatch);
      await this.trail.note(sql, caller, { act: 'despatched', kind: 'request', id }, { before: request });
      return this.despatches.note(sql, programmeId, id);
    });
  }

  /** Sent again after a lost answer it is the same despatch; anything else is another one. */
  async #refuseOther(sql: UnitOfWork, { programmeId }: Caller, id: string, { lines }: Despatch): Promise<void> {
    const earlier = new Set(await this.despatches.entriesOf(sql, programmeId, id));
    if (lines.length === earlier.size && lines.every(({ entryId }) => earlier.has(entryId))) return;
    throw new DomainError('request/gone-already', 'make a new request; what went is mended in the history of its batches');
  }
}

function refuseWhatMayNotGo(lines: Despatch['lines'], supplies: readonly SupplyRow[]): void {
  const asked = new Map<string, number>();
  for (const { batchId, n } of lines) asked.set(batchId, (asked.get(batchId) ?? 0) + n);
  for (const [batchId, n] of asked) {
    const supply = supplies.find((one) => one.batchId === batchId);
    if (!supply) throw new DomainError('request/does-not-fit', 'it is of another species, stage or stand, or stands in other hands', { batchId });
    const most = Math.max(supply.free, supply.covered);
    if (n > most) throw new DomainError('request/more-than-free', `of ${supply.label ?? 'that batch'} only ${most} may go, the rest is promised to others`, { free: most, asked: n });
  }
}

/** @throws DomainError `request/partner-place-needed` */
function entriesOf(request: PlantRequest, { observedOn, placeId, lines, workdayId, note }: Despatch, writtenAt: string): NewEntry[] {
  const { partnerId, outside, placeId: siteId } = request;
  return lines.map(({ entryId, batchId, n, toBatchId, label }) => {
    const there = { toBatchId, ...(label === undefined ? {} : { label }) };
    const around = { id: entryId, observedOn, writtenAt, ...(workdayId && { workdayId }), ...(note && { note }) };
    if (siteId !== null) return { ...around, saying: { kind: 'planted', batchId, n, placeId: siteId, ...there } };
    if (partnerId === null) return { ...around, saying: { kind: 'givenOut', batchId, n, outside: outside ?? '' } };
    if (placeId === undefined) throw new DomainError('request/partner-place-needed', 'choose the place where the partner keeps them, or add one under places');
    return { ...around, saying: { kind: 'givenOut', batchId, n, partnerId, placeId, ...there } };
  });
}

/** @throws DomainError as the first refused entry says: all of it goes, or nothing */
function refuseFirst(items: readonly WrittenEntry[]): void {
  const problem = items.find(({ status }) => status === 'refused')?.problem;
  if (problem) throw new DomainError(problem.type.replace('/problems/', ''), problem.detail ?? problem.title, problem.facts);
}
