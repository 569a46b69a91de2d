import { PHOTO_BYTES, PHOTO_SIDE, PHOTO_SMALL_SIDE } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { createHash } from 'node:crypto';
import sharp, { type OutputInfo, type Sharp } from 'sharp';
import { isMovingPng, kindOfPicture } from './picture-kind.ts';
import { PictureQueue } from './picture-queue.ts';

/** The largest sensors of phones in use give 8,160 x 6,144. Unpacked, that is about 200 megabytes. */
const MOST_PIXELS = 52_000_000;
/** A picture of a single row of millions of pixels keeps a processor busy for half a minute. */
const LONGEST_SIDE = 20_000;
const SECONDS = 20;

/** A picture as it is kept: JPEG, turned upright, without a word about where, when or by what it was taken. */
export interface Picture {
  readonly bytes: Buffer;
  /** SHA-256 of the bytes, under which it lies on disk. */
  readonly hash: Buffer;
}

export interface Pictures {
  readonly large: Picture;
  readonly small: Picture;
  /** Of the large one, in pixels. */
  readonly width: number;
  readonly height: number;
}

// Decoded pictures are never asked for twice.
sharp.cache(false);
const queue = new PictureQueue(2, 24);

/**
 * Makes the two pictures that are kept out of what was sent. Everything is encoded anew, so nothing of
 * the file itself goes on: no metadata, no profile, no second file hidden behind its end.
 *
 * @throws DomainError `photo/not-a-picture`, `photo/too-large`, `photo/too-many-pixels`, `photo/moves`,
 *   `photo/damaged`; `http/busy` when too many come at once
 */
export async function picturesOf(sent: Buffer): Promise<Pictures> {
  if (sent.length > PHOTO_BYTES) throw tooLarge(sent.length);
  const kind = kindOfPicture(sent);
  return queue.run(async () => {
    try {
      await refuseUnfit(sent, kind);
      return await made(sent);
    } catch (error) {
      if (error instanceof DomainError) throw error;
      // What a decoder says of a broken file helps nobody, and may quote it.
      throw new DomainError('photo/damaged', 'the file ends early or is broken: choose it again, or take the photo anew');
    }
  });
}

export const tooLarge = (bytes: number): DomainError =>
  new DomainError('photo/too-large', 'at most 15 MB: make it smaller, or let the web app do so', { bytes, most: PHOTO_BYTES });

/** By the head of the file, before a pixel is unpacked. */
async function refuseUnfit(sent: Buffer, kind: string): Promise<void> {
  const { format, width, height, pages = 1 } = await sharp(sent, { failOn: 'error', limitInputPixels: false }).metadata();
  if (format !== kind) throw new DomainError('photo/not-a-picture', 'photos are taken as JPEG, PNG or WebP');
  if (pages > 1 || (kind === 'png' && isMovingPng(sent))) throw new DomainError('photo/moves', 'send one still picture of it');
  if (width * height > MOST_PIXELS || Math.max(width, height) > LONGEST_SIDE) {
    throw new DomainError('photo/too-many-pixels', 'at most 52 million, and 20,000 a side: make it smaller, or let the web app do so', { width, height });
  }
}

async function made(sent: Buffer): Promise<Pictures> {
  const { data, info } = await asJpeg(sharp(sent, { failOn: 'error', limitInputPixels: MOST_PIXELS, sequentialRead: true }).autoOrient(), PHOTO_SIDE);
  const small = await asJpeg(sharp(data), PHOTO_SMALL_SIDE);
  return { large: named(data), small: named(small.data), width: info.width, height: info.height };
}

/** What could be seen through stands on white; colours are those that every screen shows (sRGB). */
const asJpeg = (picture: Sharp, side: number): Promise<{ data: Buffer; info: OutputInfo }> =>
  picture
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#fff' })
    .toColourspace('srgb')
    .jpeg({ quality: 80 })
    .timeout({ seconds: SECONDS })
    .toBuffer({ resolveWithObject: true });

const named = (bytes: Buffer): Picture => ({ bytes, hash: sha256(bytes) });

export const sha256 = (bytes: Uint8Array): Buffer => createHash('sha256').update(bytes).digest();
