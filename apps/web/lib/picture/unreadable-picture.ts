/** Why a file is not made into a photo on this device. Each has words in `messages/en/photos.json`. */
export type PictureFault = 'empty' | 'notReadable' | 'blocked';

/** A chosen file that this browser cannot make a photo of. */
export class UnreadablePicture extends Error {
  override readonly name = 'UnreadablePicture';

  constructor(readonly fault: PictureFault) {
    super(fault);
  }
}
