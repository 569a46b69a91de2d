import { Injectable } from '@nestjs/common';
import { Place } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { dayOf, dayOrNull } from '../database/day.ts';
import { known } from '../database/known.ts';
import type { Records } from '../database/prisma-door.ts';

/** Nothing lies in these: plants stand in them. */
const HOLDS_NO_PLACES = new Set(['tray', 'plot']);

@Injectable()
export class PlaceRecordQueries {
  /** @throws DomainError `record/unknown` */
  async one(records: Records, programmeId: string, id: string): Promise<Place> {
    const row = known(await records.place.findUnique({ where: { programmeId_id: { programmeId, id } }, omit: { programmeId: true } }));
    const fillings = await records.trayFilling.findMany({ where: { programmeId, placeId: id }, orderBy: [{ filledOn: 'desc' }, { id: 'desc' }] });
    return Place.parse({
      ...row,
      closedOn: dayOrNull(row.closedOn),
      fillings: fillings.map((filling) => ({ ...filling, filledOn: dayOf(filling.filledOn) })),
    });
  }

  /**
   * @param parentId where something is to lie; null: in no other place
   * @throws DomainError `record/no-such-place`, `place/holds-no-places` for a tray, a plot, or a site (which holds plots only)
   */
  async refuseToPutInto(records: Records, programmeId: string, parentId: string | null): Promise<void> {
    if (parentId === null) return;
    const parent = await records.place.findUnique({ where: { programmeId_id: { programmeId, id: parentId } }, select: { kind: true } });
    if (!parent) throw new DomainError('record/no-such-place', 'there is no place with that id to put it into');
    if (HOLDS_NO_PLACES.has(parent.kind)) throw new DomainError('place/holds-no-places', `a ${parent.kind} holds plants, not places`);
    if (parent.kind === 'site') throw new DomainError('place/holds-no-places', 'a site holds plots, which are made at the site');
  }
}
