import { z } from 'zod';
import { Day, Id, PageQuery, Prose } from './shapes.ts';

/** Largest picture taken, in bytes. Phones and the web app make theirs smaller before they send them. */
export const PHOTO_BYTES = 15 * 1024 * 1024;
/** Longest side of a picture as it is kept; a longer one is made smaller. */
export const PHOTO_SIDE = 2_048;
/** Longest side of the small one that lists show. */
export const PHOTO_SMALL_SIDE = 320;

/** A tray portrait is taken from above on the sticking night, to lay over the map of its rows. */
export const PhotoKind = z.enum(['plain', 'portrait']);
export type PhotoKind = z.infer<typeof PhotoKind>;

const PerCent = z.int().min(0).max(100);
/** A tray takes up at least so much of its portrait, in per cent of either side. */
const FRAME_AT_LEAST = 10;

/** Where a tray lies in its portrait, in per cent of the picture from its top left corner: body of PUT photos/:id/frame. The last one told holds. */
export const TrayFrame = z
  .strictObject({
    left: PerCent,
    top: PerCent,
    right: PerCent,
    bottom: PerCent,
    /** On which side of the picture the tray's label is: rows are counted from there. */
    labelSide: z.enum(['top', 'right', 'bottom', 'left']),
  })
  .refine(({ left, right }) => right - left >= FRAME_AT_LEAST, { path: ['right'], error: `must be at least ${FRAME_AT_LEAST} more than left` })
  .refine(({ top, bottom }) => bottom - top >= FRAME_AT_LEAST, { path: ['bottom'], error: `must be at least ${FRAME_AT_LEAST} more than top` });
export type TrayFrame = z.infer<typeof TrayFrame>;

/** Query of GET places/:id/photos. */
export const PhotosOfPlaceQuery = PageQuery.extend({ /** Only tray portraits, or only the others. */ kind: PhotoKind.optional() });
export type PhotosOfPlaceQuery = z.infer<typeof PhotosOfPlaceQuery>;

const YesNo = z.enum(['yes', 'no'], { error: 'must be yes or no' });

/** What a picture shows and when it was taken: the query of `PUT photos/:id`, whose body is the picture itself. */
export const PutPhoto = z
  .strictObject({
    batchId: Id.optional(),
    donorTreeId: Id.optional(),
    placeId: Id.optional(),
    /** The entry `noted` that it belongs to. */
    noteId: Id.optional(),
    takenOn: Day,
    /** Who took it, where that is somebody else than who sends it. */
    takenBy: Id.optional(),
    kind: PhotoKind.default('plain'),
    /**
     * Whether somebody could find the spot by it. Then only those who see exact places are shown it.
     * Left out: yes for a donor tree, no for anything else.
     */
    showsWhere: YesNo.optional(),
  })
  .refine(({ batchId, donorTreeId, placeId }) => [batchId, donorTreeId, placeId].filter((id) => id !== undefined).length === 1, {
    path: ['batchId'], error: 'name one thing that it shows: a batch, a donor tree or a place',
  })
  .refine(({ kind, placeId }) => kind === 'plain' || placeId !== undefined, { path: ['kind'], error: 'a portrait is of a tray: name it as placeId' });
export type PutPhoto = z.infer<typeof PutPhoto>;

/** The picture itself. What it is, is decided by what stands in it, never by its name or by what was said of it. */
export const PictureContent = z.custom<Uint8Array>((value) => value instanceof Uint8Array, { error: 'send the picture itself, as image/jpeg, image/png or image/webp' });
export type PictureContent = z.infer<typeof PictureContent>;

/** A photo, but for its pixels: these are at `photos/:id/large` and `photos/:id/small`, always JPEG. */
export const Photo = z.object({
  id: Id,
  batchId: Id.nullable(),
  donorTreeId: Id.nullable(),
  placeId: Id.nullable(),
  /** The note that it belongs to, as it reads now; nothing once that was withdrawn. */
  note: z.object({ entryId: Id, text: z.string().nullable() }).nullable(),
  takenOn: Day,
  kind: PhotoKind,
  showsWhere: z.boolean(),
  /** Pixels of the large one. */
  width: z.int(),
  height: z.int(),
  takenBy: z.string(),
  receivedAt: z.string(),
  /** Of a tray portrait: where the tray lies in it, once somebody told. */
  frame: z.object(TrayFrame.shape).nullable(),
  /** Taken down: it is in no list, and its picture is gone. */
  isWithdrawn: z.boolean(),
});
export type Photo = z.infer<typeof Photo>;

/** Why a photo is taken down. Its picture is removed and does not come back. */
export const WithdrawPhoto = z.strictObject({ reason: Prose });
export type WithdrawPhoto = z.infer<typeof WithdrawPhoto>;
