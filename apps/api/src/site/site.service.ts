import { Injectable } from '@nestjs/common';
import { type NewPlot, type NewSite, Site, type SiteCell, type SiteContent } from '@sprigline/contract';
import { DomainError, generalisedPosition } from '@sprigline/domain';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import { WhoMaySeeQueries } from '../entry/who-may-see.queries.ts';
import { cellOf } from '../exact-place/cell.queries.ts';
import type { Caller } from '../http/caller.ts';
import { noteFor } from '../http/note-for.ts';
import { refuseIfStale } from '../http/etag.ts';

@Injectable()
export class SiteService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly whoMaySee: WhoMaySeeQueries,
  ) {}

  list(caller: Caller): Promise<Site[]> {
    return this.door.inTransaction(caller, (records) => this.#sites(records, caller));
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Site> {
    return this.door.inTransaction(caller, (records) => this.#one(records, caller, id));
  }

  /** @throws DomainError `record/name-taken`, `record/id-reused`, `record/no-such-partner` */
  make(caller: Caller, site: NewSite): Promise<Site> {
    const { programmeId } = caller;
    const { id, plots, land, cell, ...content } = site;
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'site', site)) {
        await records.place.create({ data: { programmeId, id, kind: 'site', ...content } });
        await records.site.create({ data: { programmeId, placeId: id, land, ...toColumns(cell) } });
        await records.place.createMany({ data: plots.map((plot) => ({ programmeId, parentId: id, kind: 'plot', ...plot })) });
      }
      return this.#one(records, caller, id);
    });
  }

  /** A plot is a place too: it is renamed and closed as one. @throws DomainError `record/unknown`, `record/name-taken`, `record/id-reused` */
  addPlot(caller: Caller, siteId: string, plot: NewPlot): Promise<Site> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      await this.#one(records, caller, siteId);
      if (await this.trail.isNew(records, caller, 'place', plot)) {
        await records.place.create({ data: { programmeId, parentId: siteId, kind: 'plot', ...plot } });
      }
      return this.#one(records, caller, siteId);
    });
  }

  /** @throws DomainError `record/unknown`, `record/name-taken`, `record/no-such-partner`, `http/version-stale` */
  change(caller: Caller, id: string, content: SiteContent, seen: string): Promise<Site> {
    const { programmeId } = caller;
    const { land, cell, ...place } = content;
    return this.door.behindALock(caller, async (records) => {
      await this.whoMaySee.hold(records, programmeId);
      const { plots, ...earlier } = await this.#one(records, caller, id);
      refuseIfStale(seen, { ...earlier, plots });
      await records.place.update({ where: { programmeId_id: { programmeId, id } }, data: place });
      await records.site.update({ where: { programmeId_placeId: { programmeId, placeId: id } }, data: { land, ...toColumns(cell) } });
      if (earlier.partnerId !== content.partnerId) await this.whoMaySee.placeChanged(records, programmeId, id);
      const later = await this.#one(records, caller, id);
      await this.trail.changed(records, caller, 'site', id, before(earlier, later));
      return later;
    });
  }

  async #one(records: Records, caller: Caller, id: string): Promise<Site> {
    return known((await this.#sites(records, caller, id))[0]);
  }

  async #sites(records: Records, caller: Caller, id?: string): Promise<Site[]> {
    const { programmeId } = caller;
    const inOrder = { where: { programmeId }, orderBy: [{ walkOrder: 'asc' as const }, { name: 'asc' as const }] };
    const sites = await records.site.findMany({ where: { programmeId, ...(id && { placeId: id }) } });
    const ids = { in: sites.map(({ placeId }) => placeId) };
    const places = await records.place.findMany({ ...inOrder, where: { programmeId, id: ids } });
    const plots = await records.place.findMany({ ...inOrder, where: { programmeId, parentId: ids, closedOn: null } });
    const siteOf = new Map(sites.map((site) => [site.placeId, site]));
    return places.map((place) => {
      const site = known(siteOf.get(place.id));
      const ofSite = plots.filter(({ parentId }) => parentId === place.id).map((plot) => ({ ...plot, note: noteFor(caller, plot.note) }));
      return Site.parse({ ...place, note: noteFor(caller, place.note), land: site.land, cell: cellOf(site), plots: ofSite });
    });
  }
}

/** What callers send is rounded to the grid they chose before it is kept. */
function toColumns(cell: SiteCell | null) {
  if (cell === null) return { cellLatitude: null, cellLongitude: null, cellDegrees: null };
  const sensitivity = { 0.1: 2, 0.01: 3, 0.001: 4 }[cell.degrees];
  const rounded = generalisedPosition(cell.latitude, cell.longitude, sensitivity);
  if (!rounded) throw new DomainError('place/no-such-class', 'the side of a cell is 0.1, 0.01 or 0.001 degrees');
  return { cellLatitude: rounded.latitude, cellLongitude: rounded.longitude, cellDegrees: rounded.degrees };
}
