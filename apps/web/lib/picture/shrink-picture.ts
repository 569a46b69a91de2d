import { fittedSize, type Size } from './fitted-size.ts';
import { openPicture, type OpenPicture } from './open-picture.ts';
import { UnreadablePicture } from './unreadable-picture.ts';

/** The same as the API keeps: more would be sent for nothing. */
export const LONGEST_SIDE = 2_048;
const QUALITY = 0.8;

export interface ShrunkPicture extends Size {
  /** A JPEG; its type says so. */
  readonly blob: Blob;
}

/**
 * Draws a chosen picture anew, upright and at most 2,048 pixels a side, and packs that. So nothing of the file
 * itself leaves the device: no place, no time, no camera. Takes a second or two for a large one; do one at a time.
 *
 * @throws UnreadablePicture `empty`; `notReadable` for what this browser cannot show; `blocked` where it gives
 *   pages other pixels than were drawn, as some do against being recognised
 */
export async function shrinkPicture(file: Blob): Promise<ShrunkPicture> {
  if (!givesBackWhatWasDrawn()) throw new UnreadablePicture('blocked');
  const picture = await openPicture(file);
  try {
    const size = fittedSize(picture, LONGEST_SIDE);
    return { ...size, blob: await packed(picture, size) };
  } finally {
    picture.close();
  }
}

async function packed({ drawable }: OpenPicture, { width, height }: Size): Promise<Blob> {
  const canvas = canvasOf({ width, height });
  const pen = canvas.getContext('2d', { alpha: false });
  if (!pen) throw new UnreadablePicture('notReadable');
  // What can be seen through would turn black.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(drawable, 0, 0, width, height);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
  // Phones give the room of a canvas back late unless it is made small.
  Object.assign(canvas, { width: 0, height: 0 });
  if (!blob || blob.size === 0) throw new UnreadablePicture('notReadable');
  return blob;
}

const canvasOf = (size: Size): HTMLCanvasElement => Object.assign(document.createElement('canvas'), size);

/** Dark grey is drawn and looked at again. A little noise does no harm; white, or chance, would be kept as the photo. */
function givesBackWhatWasDrawn(): boolean {
  const pen = canvasOf({ width: 4, height: 4 }).getContext('2d', { willReadFrequently: true });
  if (!pen) return false;
  pen.fillStyle = '#404040';
  pen.fillRect(0, 0, 4, 4);
  return pen.getImageData(0, 0, 4, 4).data.every((value, at) => at % 4 === 3 || Math.abs(value - 0x40) < 16);
}
