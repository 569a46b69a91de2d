import { DomainError } from '@sprigline/domain';

export type PictureKind = 'jpeg' | 'png' | 'webp';

const text = (bytes: Buffer, from: number, to: number): string => bytes.toString('latin1', from, to);

/** The first bytes of what is taken. Nothing else is ever handed to a decoder. */
const BEGINNINGS: readonly (readonly [PictureKind, (bytes: Buffer) => boolean])[] = [
  ['jpeg', (bytes) => text(bytes, 0, 3) === '\xff\xd8\xff'],
  ['png', (bytes) => text(bytes, 0, 8) === '\x89PNG\r\n\x1a\n'],
  ['webp', (bytes) => text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 12) === 'WEBP'],
];

/** What else people have on their phones and computers, and what to do with it. */
const OTHERS: readonly (readonly [(bytes: Buffer) => boolean, string])[] = [
  [(bytes) => /^ftyp(heic|heix|hevc|heim|mif1|msf1|avif|avis)/.test(text(bytes, 4, 12)), 'this looks like HEIC or AVIF: open it and save it as JPEG, or let the camera take JPEG'],
  [(bytes) => text(bytes, 4, 8) === 'ftyp', 'this looks like a film: take a photo instead'],
  [(bytes) => /^GIF8[79]a/.test(text(bytes, 0, 6)), 'this is a GIF: save it as JPEG or PNG'],
  [(bytes) => text(bytes, 0, 5) === '%PDF-', 'this is a PDF: take a photo of the sheet instead'],
  [(bytes) => /<svg[\s>]/i.test(text(bytes, 0, 4_096)), 'this is a drawing (SVG), which may hold programs: save it as PNG'],
];

/**
 * What a file is, by its content alone: neither its name nor what was said of it counts.
 *
 * @throws DomainError `photo/not-a-picture` with what to do
 */
export function kindOfPicture(bytes: Buffer): PictureKind {
  if (bytes.length === 0) throw new DomainError('photo/not-a-picture', 'the file holds nothing: choose it again, or take the photo anew');
  const [kind] = BEGINNINGS.find(([, begins]) => begins(bytes)) ?? [];
  if (kind) return kind;

  const [, advice] = OTHERS.find(([is]) => is(bytes)) ?? [];
  throw new DomainError('photo/not-a-picture', advice ?? 'photos are taken as JPEG, PNG or WebP');
}

/** Whether a PNG moves: it then tells so before its first row of pixels. */
export function isMovingPng(bytes: Buffer): boolean {
  const control = bytes.indexOf('acTL', 8, 'latin1');
  const pixels = bytes.indexOf('IDAT', 8, 'latin1');
  return control >= 0 && (pixels < 0 || control < pixels);
}
