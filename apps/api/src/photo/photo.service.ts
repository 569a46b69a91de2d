import { Inject, Injectable } from '@nestjs/common';
import type { PageQuery, Photo, PhotoKind, PutPhoto, TrayFrame } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { TrailQueries } from '../audit/trail.queries.ts';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { asTheHouse } from '../database/context.ts';
import { Database } from '../database/database.ts';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Caller } from '../http/caller.ts';
import { keysAfter, type Part, partOf } from '../http/part-of-list.ts';
import {
  addPhoto, frameTray, isThere, lockPictures, type Named, namedBy, photoOf, type PhotoRow, photosOf, pictureOf, type Subject, unnamedAmong, withdrawPhoto,
} from './photo.queries.ts';
import { keepPicture, pictureFile, readPicture, removePicture } from './picture-files.ts';
import { type Pictures, picturesOf, sha256 } from './picture-making.ts';

/** As it is answered: the pixels, and what they are called. */
export interface Answered {
  readonly bytes: Buffer;
  readonly hash: Buffer;
  readonly takenOn: string;
}

@Injectable()
export class PhotoService {
  constructor(
    private readonly database: Database,
    private readonly trail: TrailQueries,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  /**
   * Keeps a photo; the same sent again is kept once. The row is written after the files, so a row
   * without its picture means damage, and a request that fails leaves no picture.
   *
   * Whoever took it may tell where the spot is and not see it themselves, hence the house writes it.
   *
   * @throws DomainError `record/id-reused`, `batch/unknown`, `record/no-such-…`, `photo/no-such-note`, and what `picturesOf` refuses
   */
  async keep(caller: Caller, id: string, told: PutPhoto, sent: Buffer): Promise<Photo> {
    const sentHash = sha256(sent);
    const house = asTheHouse(caller);
    const earlier = await this.database.inTransaction(house, async (sql) => {
      const row = await photoOf(sql, caller.programmeId, id);
      if (!row) refuseUnknown(await namedBy(sql, caller.programmeId, told));
      return row;
    });
    if (earlier) return sameAs(earlier, caller, told, sentHash);

    const pictures = await picturesOf(sent);
    try {
      return await this.database.inTransaction(house, async (sql) => {
        await this.#keepFiles(sql, caller.programmeId, pictures);
        await addPhoto(sql, caller, id, { ...told, isWhere: isWhere(told) }, sentHash, pictures);
        const row = await photoOf(sql, caller.programmeId, id);
        if (!row) throw new Error('a photo that was written is not there');
        return sameAs(row, caller, told, sentHash);
      });
    } catch (error) {
      await this.#removeUnnamed(house, hashesOf(pictures));
      throw error;
    }
  }

  /** The newest first. @throws DomainError `batch/unknown`, `record/unknown`, `http/bad-cursor` */
  async list(caller: Caller, subject: Subject, id: string, { after, limit, kind }: PageQuery & { readonly kind?: PhotoKind | undefined }): Promise<Part<Photo>> {
    const from = keysAfter(after, 2);
    const photos = await this.database.inTransaction(caller, async (sql) => {
      if (!(await isThere(sql, caller.programmeId, subject, id))) throw unknown(subject);
      return photosOf(sql, caller.programmeId, subject, id, from, limit + 1, kind);
    });
    return partOf(photos, limit, ({ takenOn, id: last }) => [takenOn, last]);
  }

  /** @throws DomainError `record/unknown`, `photo/withdrawn`, `photo/file-missing` */
  async picture(caller: Caller, id: string, size: 'large' | 'small'): Promise<Answered> {
    const row = await this.database.inTransaction(caller, (sql) => pictureOf(sql, caller.programmeId, id));
    if (!row) throw new DomainError('record/unknown', 'no photo has this id');
    if (row.isWithdrawn) throw new DomainError('photo/withdrawn', 'its picture was removed and does not come back');
    const hash = size === 'large' ? row.largeHash : row.smallHash;
    const bytes = await readPicture(this.#file(caller.programmeId, hash));
    if (!bytes) throw new DomainError('photo/file-missing', 'tell whoever runs this install: the folder of photos may have been left out of a backup');
    return { bytes, hash, takenOn: row.takenOn };
  }

  /** Says where the tray lies in its portrait; of two tellings the last holds. @throws DomainError `record/unknown`, `photo/withdrawn`, `photo/not-a-portrait` */
  async frame(caller: Caller, id: string, frame: TrayFrame): Promise<void> {
    await this.database.inTransaction(caller, async (sql) => {
      const row = await photoOf(sql, caller.programmeId, id);
      if (!row) throw new DomainError('record/unknown', 'no photo has this id');
      if (row.photo.isWithdrawn) throw new DomainError('photo/withdrawn', 'its picture was removed and does not come back');
      if (row.photo.kind !== 'portrait') throw new DomainError('photo/not-a-portrait', 'only a tray portrait has rows to draw: send the photo as one of kind portrait');
      await frameTray(sql, caller, id, frame);
    });
  }

  /** Takes it down: the row stays, and says who did so and why. Done twice, the first reason stands. @throws DomainError `record/unknown` */
  async withdraw(caller: Caller, id: string, reason: string): Promise<void> {
    const row = await this.database.inTransaction(caller, async (sql) => {
      const withdrawn = await withdrawPhoto(sql, caller, id, reason);
      if (!withdrawn) throw new DomainError('record/unknown', 'no photo has this id');
      if (withdrawn.isFirst) await this.trail.note(sql, caller, { act: 'withdrawn', kind: 'photo', id }, { reason });
      return withdrawn;
    });
    await this.#removeUnnamed(caller, [row.largeHash, row.smallHash]);
  }

  /** Behind a lock that is held until the row is there, so that nobody removes them in between. Done again, it does the same. */
  async #keepFiles(sql: UnitOfWork, programmeId: string, pictures: Pictures): Promise<void> {
    await lockPictures(sql, programmeId, hashesOf(pictures));
    for (const { hash, bytes } of [pictures.large, pictures.small]) await keepPicture(this.#file(programmeId, hash), bytes);
  }

  /** As the house: a photo that the caller may not see keeps its picture, too. */
  async #removeUnnamed(caller: Caller, hashes: readonly Buffer[]): Promise<void> {
    await this.database.inTransaction(asTheHouse(caller), async (sql) => {
      await lockPictures(sql, caller.programmeId, hashes);
      for (const hash of await unnamedAmong(sql, caller.programmeId, hashes)) await removePicture(this.#file(caller.programmeId, hash));
    });
  }

  #file(programmeId: string, hash: Buffer): string {
    return pictureFile(this.settings.photoFolder, programmeId, hash);
  }
}

const unknown = (subject: Subject): DomainError =>
  subject === 'batches' ? new DomainError('batch/unknown', 'no batch has this id') : new DomainError('record/unknown', 'nothing has this id');

const hashesOf = ({ large, small }: Pictures): Buffer[] => [large.hash, small.hash];

/** A wild tree stands where its photo was taken, so its photos are kept back unless somebody says that they show no place. */
const isWhere = ({ showsWhere, donorTreeId }: PutPhoto): boolean => (showsWhere === undefined ? donorTreeId !== undefined : showsWhere === 'yes');

function refuseUnknown({ batch, donorTree, place, note }: Named): void {
  if (!batch) throw new DomainError('batch/unknown', 'no batch has this id: send the entry that opens it first');
  if (!donorTree) throw new DomainError('record/no-such-donor-tree', 'this programme has no donor tree with that id');
  if (!place) throw new DomainError('record/no-such-place', 'this programme has no place with that id');
  if (!note) throw new DomainError('photo/no-such-note', 'send the entry of kind noted first, then its photos');
}

/** @throws DomainError `record/id-reused` */
function sameAs({ photo, ...row }: PhotoRow, caller: Caller, told: PutPhoto, sentHash: Buffer): Photo {
  const before = [photo.batchId, photo.donorTreeId, photo.placeId, row.noteId, photo.takenOn, row.takenById, photo.kind, photo.showsWhere];
  const now = [told.batchId, told.donorTreeId, told.placeId, told.noteId, told.takenOn, told.takenBy ?? caller.personId, told.kind, isWhere(told)];
  if (row.sentHash.equals(sentHash) && before.every((one, at) => one === (now[at] ?? null))) return photo;
  throw new DomainError('record/id-reused', 'that id was sent before with another picture, or as one of something else: make a new id for a new photo');
}
