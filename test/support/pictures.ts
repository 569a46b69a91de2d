import sharp from 'sharp';
import { crc32, deflateSync } from 'node:zlib';

const plain = (width: number, height: number, background = '#5b7a4a') => ({ create: { width, height, channels: 3 as const, background } });

/** A JPEG of one colour; two colours are two pictures. */
export const jpegOf = (width: number, height: number, background?: string): Promise<Buffer> => sharp(plain(width, height, background)).jpeg().toBuffer();

/** Not a coordinate of anything: in the open sea, as all invented places. */
export const SECRETS = { camera: 'Skellcam 3000', degrees: '48 25 1', artist: 'Rowan of the leaning post' };

/** A photo as a phone writes it: lying on its side, with the place, the camera and a name in its EXIF and XMP. */
export const photoOfAPhone = (width = 400, height = 300): Promise<Buffer> =>
  sharp(plain(width, height))
    .jpeg()
    .withExif({
      IFD0: { Make: SECRETS.camera, Artist: SECRETS.artist, Orientation: '6' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '48/1 25/1 1/1', GPSLongitudeRef: 'W', GPSLongitude: '30/1 12/1 9/1' },
    })
    .withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" dc:creator="${SECRETS.artist}"/></rdf:RDF></x:xmpmeta>`)
    .withMetadata({ orientation: 6 })
    .toBuffer();

/** How metadata, and what may hide behind a picture, would stand in its bytes. */
export const tracesIn = (bytes: Buffer): string[] =>
  ['Exif\0', 'GPS', 'http://ns.adobe.com', 'xmpmeta', 'rdf:', 'Photoshop', 'ICC_PROFILE', 'acsp', 'EXIF', '<script', '<html', 'PK\x03\x04', SECRETS.camera, SECRETS.artist]
    .filter((trace) => bytes.includes(Buffer.from(trace, 'latin1')));

function chunk(name: string, data: Buffer): Buffer {
  const [length, check, named] = [Buffer.alloc(4), Buffer.alloc(4), Buffer.concat([Buffer.from(name, 'latin1'), data])];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}

/**
 * A grey PNG written by hand, so that it may lie about itself.
 *
 * @param rows bytes of all rows as they are unpacked; fewer than the head promises, or more
 * @param before chunks between the head and the pixels
 */
export function greyPng(width: number, height: number, rows: number, before: readonly Buffer[] = []): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  return Buffer.concat([Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'), chunk('IHDR', head), ...before, chunk('IDAT', deflateSync(Buffer.alloc(rows))), chunk('IEND', Buffer.alloc(0))]);
}

const packed = (name: string, megabytes: number): Buffer => chunk(name, Buffer.concat([Buffer.from('x\0\0', 'latin1'), deflateSync(Buffer.alloc(megabytes * 1_000_000))]));
const behind = (picture: Buffer, text: string): Buffer => Buffer.concat([picture, Buffer.from(text, 'latin1')]);

/** Files that look like a picture and are none, or none that may be kept, and the code of the refusal. */
export async function badPictures(): Promise<Readonly<Record<string, readonly [bytes: Buffer, code: string]>>> {
  const jpeg = await jpegOf(60, 40);
  const still = sharp(plain(16, 16));
  const moving = await sharp([await still.png().toBuffer(), await sharp(plain(16, 16, '#004')).png().toBuffer()], { join: { animated: true } }).webp().toBuffer();
  return {
    'an empty file': [Buffer.alloc(0), 'photo/not-a-picture'],
    'a text that is named a photo': [Buffer.from('Twelve junipers, all alive.'), 'photo/not-a-picture'],
    'a drawing that holds a program': [Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>alert(1)</script></svg>'), 'photo/not-a-picture'],
    'a drawing that begins like a JPEG': [Buffer.concat([Buffer.from([0xff, 0xd8, 0xff]), Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>')]), 'photo/damaged'],
    'a GIF': [await sharp(plain(9, 9)).gif().toBuffer(), 'photo/not-a-picture'],
    'a HEIC of a phone': [Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'), 'photo/not-a-picture'],
    'a page': [Buffer.from('<!doctype html><script>alert(1)</script>'), 'photo/not-a-picture'],
    'an archive that ends like a JPEG': [Buffer.concat([Buffer.from('PK\x03\x04', 'latin1'), jpeg]), 'photo/not-a-picture'],
    'a JPEG of which half is missing': [jpeg.subarray(0, jpeg.length / 2), 'photo/damaged'],
    'a JPEG that lost its last bytes': [(await sharp({ ...plain(300, 200), create: { ...plain(300, 200).create, noise: { type: 'gaussian', mean: 128, sigma: 40 } } }).jpeg().toBuffer()).subarray(0, -40), 'photo/damaged'],
    'a PNG that promises more rows than it has': [greyPng(100, 100, 1_000), 'photo/damaged'],
    'a PNG that says it has 30,000 x 30,000 pixels': [greyPng(30_000, 30_000, 1_000), 'photo/too-many-pixels'],
    'a small file of a hundred million pixels': [greyPng(10_000, 10_000, 10_001 * 10_000), 'photo/too-many-pixels'],
    'a single row of a million pixels': [greyPng(1_000_000, 1, 1_000_001), 'photo/too-many-pixels'],
    'a WebP that moves': [moving, 'photo/moves'],
    'a PNG that moves': [greyPng(10, 10, 110, [chunk('acTL', Buffer.from([0, 0, 0, 2, 0, 0, 0, 0]))]), 'photo/moves'],
    'a file of more than 15 MB': [behind(jpeg, 'x'.repeat(15 * 1024 * 1024)), 'photo/too-large'],
  };
}

/** Pictures with something else inside, or behind. They are kept, and nothing of that else is. */
export async function doubtfulPictures(): Promise<Readonly<Record<string, Buffer>>> {
  const jpeg = await jpegOf(60, 40);
  return {
    'a JPEG that is a page, too': behind(jpeg, '<html><script>alert(1)</script></html>'),
    'a JPEG that is an archive, too': behind(jpeg, 'PK\x03\x04\x14\0\0\0\0\0 a program'),
    'a PNG whose words unpack to a hundred megabytes': greyPng(10, 10, 110, [packed('zTXt', 100)]),
    'a PNG whose profile unpacks to a hundred megabytes': greyPng(10, 10, 110, [packed('iCCP', 100)]),
    'a PNG with far more pixels than it says': greyPng(10, 10, 20_000_000),
    'a PNG that can be seen through': await sharp({ create: { width: 30, height: 20, channels: 4, background: '#0000' } }).png().toBuffer(),
    'a picture in inks': await sharp(plain(30, 20)).toColourspace('cmyk').jpeg().toBuffer(),
    'a WebP': await sharp(plain(30, 20)).webp().toBuffer(),
    'a photo of a phone': await photoOfAPhone(),
  };
}
