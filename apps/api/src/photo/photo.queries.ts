import type { Photo, PhotoKind, PutPhoto, TrayFrame } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { type Caller, deliveredBy } from '../http/caller.ts';
import type { Pictures } from './picture-making.ts';

/** What a photo may be of, by the noun in its address. */
export const SUBJECTS = {
  'batches': { table: 'batch', column: 'batch_id' },
  'donor-trees': { table: 'donor_tree', column: 'donor_tree_id' },
  'places': { table: 'place', column: 'place_id' },
} as const;
export type Subject = keyof typeof SUBJECTS;

/** A photo with what tells whether another sending is the same. */
export interface PhotoRow extends Record<string, unknown> {
  readonly photo: Photo;
  readonly sentHash: Buffer;
  /** Claimed author and note, as they were sent. */
  readonly takenById: string;
  readonly noteId: string | null;
}

/** A note reads as its newest correction says. */
const SHOWN = `
  SELECT p.sent_hash AS "sentHash", p.taken_by AS "takenById", p.note_id AS "noteId", json_build_object(
    'id', p.id, 'batchId', p.batch_id, 'donorTreeId', p.donor_tree_id, 'placeId', p.place_id, 'takenOn', p.taken_on, 'kind', p.kind,
    'showsWhere', p.shows_where, 'width', p.width, 'height', p.height, 'takenBy', w.name, 'isWithdrawn', p.withdrawn_at IS NOT NULL,
    'frame', CASE WHEN f.photo_id IS NOT NULL THEN json_build_object('left', f.left_at, 'top', f.top_at, 'right', f.right_at, 'bottom', f.bottom_at, 'labelSide', f.label_side) END,
    'receivedAt', to_char(p.received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'),
    'note', CASE WHEN n.id IS NOT NULL AND NOT n.author_unverified AND c.kind IS DISTINCT FROM 'withdrawn'
      THEN json_build_object('entryId', n.id, 'text', coalesce(c.body #> '{instead,saying}', n.body) ->> 'text') END) AS photo
  FROM photo p JOIN person w ON w.programme_id = $1 AND w.id = p.taken_by
  LEFT JOIN tray_frame f ON f.programme_id = $1 AND f.photo_id = p.id
  LEFT JOIN entry n ON n.programme_id = $1 AND n.id = p.note_id
  LEFT JOIN LATERAL (
    SELECT kind, body FROM entry WHERE programme_id = $1 AND corrects_id = n.id AND NOT author_unverified ORDER BY received_at DESC, id DESC LIMIT 1) c ON true
  WHERE p.programme_id = $1`;

export function photoOf(sql: UnitOfWork, programmeId: string, id: string): Promise<PhotoRow | undefined> {
  return sql.maybe<PhotoRow>(`${SHOWN} AND p.id = $2`, [programmeId, id]);
}

/** The newest first, those taken down left out. */
export async function photosOf(sql: UnitOfWork, programmeId: string, subject: Subject, id: string, after: readonly string[] | undefined, limit: number, kind?: PhotoKind): Promise<Photo[]> {
  const rows = await sql.rows<PhotoRow>(
    `${SHOWN} AND p.${SUBJECTS[subject].column} = $2 AND p.withdrawn_at IS NULL AND ($3::date IS NULL OR (p.taken_on, p.id) < ($3, $4::uuid)) AND ($6::text IS NULL OR p.kind = $6)
     ORDER BY p.taken_on DESC, p.id DESC LIMIT $5`,
    [programmeId, id, after?.[0] ?? null, after?.[1] ?? null, limit, kind ?? null],
  );
  return rows.map(({ photo }) => photo);
}

export async function isThere(sql: UnitOfWork, programmeId: string, subject: Subject, id: string): Promise<boolean> {
  return (await sql.maybe(`SELECT FROM ${SUBJECTS[subject].table} WHERE programme_id = $1 AND id = $2`, [programmeId, id])) !== undefined;
}

/** Whether all that a photo names is there, asked before anything costly is done for it. */
export interface Named extends Record<string, unknown> {
  readonly batch: boolean;
  readonly donorTree: boolean;
  readonly place: boolean;
  readonly note: boolean;
}

export function namedBy(sql: UnitOfWork, programmeId: string, { batchId, donorTreeId, placeId, noteId }: PutPhoto): Promise<Named> {
  const there = (table: string, at: number, more = '') => `($${at}::uuid IS NULL OR EXISTS (SELECT FROM ${table} WHERE programme_id = $1 AND id = $${at}${more}))`;
  return sql.one<Named>(
    `SELECT ${there('batch', 2)} AS batch, ${there('donor_tree', 3)} AS "donorTree", ${there('place', 4)} AS place, ${there('entry', 5, " AND kind = 'noted'")} AS note`,
    [programmeId, batchId ?? null, donorTreeId ?? null, placeId ?? null, noteId ?? null],
  );
}

/** @returns false when something has that id already */
export async function addPhoto(sql: UnitOfWork, by: Caller, id: string, told: PutPhoto & { readonly isWhere: boolean }, sentHash: Buffer, { large, small, width, height }: Pictures): Promise<boolean> {
  const row = await sql.maybe(
    `INSERT INTO photo (programme_id, id, batch_id, donor_tree_id, place_id, note_id, kind, taken_on, shows_where, sent_hash, large_hash, small_hash, width, height, taken_by, told_by, delivered_by)
     VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, $17) ON CONFLICT DO NOTHING RETURNING id`,
    [
      by.programmeId, id, told.batchId ?? null, told.donorTreeId ?? null, told.placeId ?? null, told.noteId ?? null, told.kind, told.takenOn, told.isWhere,
      sentHash, large.hash, small.hash, width, height, told.takenBy ?? by.personId, by.personId, deliveredBy(by),
    ],
  );
  return row !== undefined;
}

/** The last one told holds. */
export async function frameTray(sql: UnitOfWork, by: Caller, photoId: string, { left, top, right, bottom, labelSide }: TrayFrame): Promise<void> {
  await sql.rows(
    `INSERT INTO tray_frame (programme_id, photo_id, left_at, top_at, right_at, bottom_at, label_side, told_by) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)
     ON CONFLICT (programme_id, photo_id) DO UPDATE SET left_at = $3, top_at = $4, right_at = $5, bottom_at = $6, label_side = $7, told_by = $8, told_at = present_time()`,
    [by.programmeId, photoId, left, top, right, bottom, labelSide, by.personId],
  );
}

/** Until the transaction ends nobody else keeps or removes these pictures. In one order, so that two never wait for each other. */
export async function lockPictures(sql: UnitOfWork, programmeId: string, hashes: readonly Buffer[]): Promise<void> {
  await sql.rows(
    `SELECT pg_advisory_xact_lock(key) FROM (
       SELECT DISTINCT hashtextextended('picture ' || $1::text || encode(hash, 'hex'), 0) AS key FROM unnest($2::bytea[]) AS hash ORDER BY key) AS keys`,
    [programmeId, hashes],
  );
}

/** Those of some pictures that no photo names any more. */
export async function unnamedAmong(sql: UnitOfWork, programmeId: string, hashes: readonly Buffer[]): Promise<Buffer[]> {
  const rows = await sql.rows<{ hash: Buffer }>(
    `SELECT hash FROM unnest($2::bytea[]) AS hash
     WHERE NOT EXISTS (SELECT FROM photo WHERE programme_id = $1 AND withdrawn_at IS NULL AND large_hash = hash)
       AND NOT EXISTS (SELECT FROM photo WHERE programme_id = $1 AND withdrawn_at IS NULL AND small_hash = hash)`,
    [programmeId, hashes],
  );
  return rows.map(({ hash }) => hash);
}

export interface PictureRow extends Record<string, unknown> {
  readonly largeHash: Buffer;
  readonly smallHash: Buffer;
  readonly takenOn: string;
  readonly isWithdrawn: boolean;
}

export function pictureOf(sql: UnitOfWork, programmeId: string, id: string): Promise<PictureRow | undefined> {
  return sql.maybe<PictureRow>(
    'SELECT large_hash AS "largeHash", small_hash AS "smallHash", taken_on AS "takenOn", withdrawn_at IS NOT NULL AS "isWithdrawn" FROM photo WHERE programme_id = $1 AND id = $2',
    [programmeId, id],
  );
}

/** The first reason stands. @returns nothing where the caller sees no such photo */
export function withdrawPhoto(sql: UnitOfWork, by: Caller, id: string, reason: string): Promise<{ largeHash: Buffer; smallHash: Buffer; isFirst: boolean } | undefined> {
  return sql.maybe<{ largeHash: Buffer; smallHash: Buffer; isFirst: boolean }>(
    `UPDATE photo p SET withdrawn_at = coalesce(p.withdrawn_at, present_time()), withdrawn_by = coalesce(p.withdrawn_by, $3), withdrawn_reason = coalesce(p.withdrawn_reason, $4)
     FROM (SELECT id, withdrawn_at IS NULL AS first FROM photo WHERE programme_id = $1 AND id = $2 FOR UPDATE) AS before
     WHERE p.programme_id = $1 AND p.id = before.id RETURNING p.large_hash AS "largeHash", p.small_hash AS "smallHash", before.first AS "isFirst"`,
    [by.programmeId, id, by.personId, reason],
  );
}
