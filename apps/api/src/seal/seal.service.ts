import { Inject, Injectable } from '@nestjs/common';
import { ExactPlace, type SealedPlace, type SealedPlaceTold } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { createHash } from 'node:crypto';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { asTheHouse } from '../database/context.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { RecordTrail } from '../database/record-trail.ts';
import { CellQueries, cellOf } from '../exact-place/cell.queries.ts';
import { ExactPlaceQueries } from '../exact-place/exact-place.queries.ts';
import type { Caller } from '../http/caller.ts';
import { SealQueries } from './seal.queries.ts';
import { cannotBeOpened, opened } from './sealing.ts';

@Injectable()
export class SealService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
    private readonly seals: SealQueries,
    private readonly places: ExactPlaceQueries,
    private readonly cells: CellQueries,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  /**
   * Opens a place that was sealed on a phone, and files it. Whoever stood there tells it blind, so the
   * house files it and answers the cell. The same sealed place again answers as before.
   *
   * @throws DomainError `record/unknown`, `seal/cannot-be-opened`, `seal/holds-no-place`, `seal/place-told`
   */
  async tell(caller: Caller, donorTreeId: string, { sealed }: SealedPlace): Promise<SealedPlaceTold> {
    const { programmeId } = caller;
    const place = await this.#placeIn(caller, donorTreeId, sealed);
    const hash = hashOf(sealed);
    return this.door.behindALock(asTheHouse(caller), async (records) => {
      const standId = await heldTree(records, programmeId, donorTreeId);
      const earlier = await this.places.toldBy(records, programmeId, { donorTreeId });
      if (earlier && !(earlier.sealedHash && hash.equals(earlier.sealedHash))) {
        throw new DomainError('seal/place-told', 'a place is told already, and only the desk may change it: ask a coordinator which is right');
      }
      if (!earlier) {
        await this.places.file(records, programmeId, { donorTreeId }, place, new Uint8Array(hash));
        await this.cells.cutAgain(records, programmeId, [standId]);
        await this.trail.changed(records, caller, 'donor-tree', donorTreeId, {}, 'placed');
      }
      const tree = await records.donorTree.findUnique({ where: { programmeId_id: { programmeId, id: donorTreeId } }, select: { cellLatitude: true, cellLongitude: true, cellDegrees: true } });
      return { donorTreeId, cell: cellOf(known(tree)) };
    });
  }

  /** What is wrong with it is not told in its own words, since those would quote the place. */
  async #placeIn(caller: Caller, donorTreeId: string, sealed: SealedPlace['sealed']): Promise<ExactPlace> {
    const lockedKey = await this.seals.lockedKey(caller, sealed.keyId);
    if (!lockedKey) throw cannotBeOpened();
    const text = await opened(this.settings.secret, { programmeId: caller.programmeId, keyId: sealed.keyId }, lockedKey, donorTreeId, sealed);
    const place = ExactPlace.safeParse(jsonIn(text));
    if (!place.success) throw new DomainError('seal/holds-no-place', 'latitude or longitude is missing or not on earth: measure the place anew');
    return place.data;
  }
}

/** Behind its lock: two who tell the place of one tree at once take turns. */
async function heldTree(records: Records, programmeId: string, id: string): Promise<string> {
  const [tree] = await records.$queryRaw<{ standId: string }[]>`
    SELECT stand_id AS "standId" FROM donor_tree WHERE programme_id = ${programmeId}::uuid AND id = ${id}::uuid FOR UPDATE`;
  return known(tree ?? null).standId;
}

const hashOf = ({ enc, ciphertext }: SealedPlace['sealed']): Buffer => createHash('sha256').update(`${enc}.${ciphertext}`).digest();

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
