import { Injectable } from '@nestjs/common';
import type { NewRegime, Regime, RegimeContent, Regimes } from '@sprigline/contract';
import { DomainError, regimeOn, whereabouts } from '@sprigline/domain';
import { Database } from '../database/database.ts';
import { asDate, dayOf, dayOrNull } from '../database/day.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';
import { placeStoryOf } from '../place/place-story.queries.ts';

/** How places are kept, from day to day. */
@Injectable()
export class RegimeService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly database: Database,
    private readonly trail: RecordTrail,
  ) {}

  /** @throws DomainError `record/unknown` */
  at(caller: Caller, placeId: string): Promise<Regimes> {
    return this.database.inTransaction(caller, async (sql) => {
      const { places, regimes } = await placeStoryOf(sql, caller.programmeId, [placeId]);
      if (!places.has(placeId)) throw new DomainError('record/unknown', 'no place has this id');
      const { today } = await sql.one<{ today: string }>('SELECT present_day($1) AS today', [caller.zone]);
      const path = whereabouts([{ placeId, from: today }], places).at(-1)?.path ?? [placeId];
      const own = regimes.filter((regime) => regime.placeId === placeId).toSorted((a, b) => (a.fromDay < b.fromDay ? 1 : -1));
      return { now: regimeOn(today, path, regimes) ?? null, own };
    });
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Regime> {
    return this.door.inTransaction(caller, (records) => this.#one(records, caller.programmeId, id));
  }

  /** The one before ends by itself. @throws DomainError `record/unknown`, `record/id-reused`, `regime/day-taken` */
  make(caller: Caller, placeId: string, regime: NewRegime): Promise<Regime> {
    const { programmeId, personId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'regime', { ...regime, placeId } as NewRegime)) {
        await records.regime.create({ data: { programmeId, placeId, toldBy: personId, ...regime, fromDay: asDate(regime.fromDay) } });
      }
      return this.#one(records, programmeId, regime.id);
    });
  }

  /** @throws DomainError `record/unknown`, `regime/day-taken`, `http/version-stale` */
  change(caller: Caller, id: string, content: RegimeContent, seen: string): Promise<Regime> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const earlier = await this.#one(records, programmeId, id);
      refuseIfStale(seen, earlier);
      await records.regime.update({ where: { programmeId_id: { programmeId, id } }, data: { ...content, fromDay: asDate(content.fromDay) } });
      await this.trail.changed(records, caller, 'regime', id, before(earlier, { ...earlier, ...content }));
      return this.#one(records, programmeId, id);
    });
  }

  async #one(records: Records, programmeId: string, id: string): Promise<Regime> {
    const { lightHours, heatC, air, fromDay, placeId, cover, note } = known(await records.regime.findUnique({ where: { programmeId_id: { programmeId, id } } }));
    const next = await records.regime.findFirst({ where: { programmeId, placeId, fromDay: { gt: fromDay } }, orderBy: { fromDay: 'asc' }, select: { fromDay: true } });
    return {
      id, placeId, cover, note, fromDay: dayOf(fromDay), untilDay: dayOrNull(next?.fromDay ?? null),
      lightHours: lightHours?.toNumber() ?? null, heatC: heatC?.toNumber() ?? null, air: air as Regime['air'],
    };
  }
}
