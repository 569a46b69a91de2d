import type { Size } from './fitted-size.ts';
import { UnreadablePicture } from './unreadable-picture.ts';

/** A picture that was unpacked, upright, ready to be drawn. It takes much room until it is closed. */
export interface OpenPicture extends Size {
  readonly drawable: CanvasImageSource;
  readonly close: () => void;
}

/** @throws UnreadablePicture `empty`, `notReadable` */
export async function openPicture(file: Blob): Promise<OpenPicture> {
  if (file.size === 0) throw new UnreadablePicture('empty');
  try {
    return await asBitmap(file);
  } catch {
    // Some browsers show in a page what they do not give as a bitmap.
    return asElement(file);
  }
}

async function asBitmap(file: Blob): Promise<OpenPicture> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  return { drawable: bitmap, width: bitmap.width, height: bitmap.height, close: () => bitmap.close() };
}

async function asElement(file: Blob): Promise<OpenPicture> {
  const address = URL.createObjectURL(file);
  const close = () => URL.revokeObjectURL(address);
  const image = new Image();
  image.src = address;
  try {
    await image.decode();
  } catch {
    close();
    throw new UnreadablePicture('notReadable');
  }
  const { naturalWidth: width, naturalHeight: height } = image;
  if (width > 0 && height > 0) return { drawable: image, width, height, close };
  close();
  throw new UnreadablePicture('notReadable');
}
