import { DomainError } from '@sprigline/domain';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { badPictures, doubtfulPictures, greyPng, jpegOf, photoOfAPhone, SECRETS, tracesIn } from '../../../../test/support/pictures.ts';
import { picturesOf } from './picture-making.ts';

const [bad, doubtful] = await Promise.all([badPictures(), doubtfulPictures()]);
const refusalOf = (sent: Buffer): Promise<unknown> => picturesOf(sent).then(() => 'kept', (error: unknown) => (error instanceof DomainError ? error.code : error));

describe('refused, with a code that says what to do:', () => {
  test.each(Object.entries(bad))('%s', async (_, [sent, code]) => {
    expect(await refusalOf(sent)).toBe(code);
  });
});

describe('kept, and nothing but its pixels:', () => {
  test.each(Object.entries(doubtful))('%s', async (_, sent) => {
    const { large, small } = await picturesOf(sent);
    for (const { bytes } of [large, small]) {
      expect(tracesIn(bytes)).toEqual([]);
      const { format, hasProfile, exif, xmp, icc, iptc, space, channels, orientation } = await sharp(bytes).metadata();
      expect({ format, hasProfile, exif, xmp, icc, iptc, space, channels, orientation }).toEqual({ format: 'jpeg', hasProfile: false, space: 'srgb', channels: 3 });
      // The last bytes end the picture: nothing stands behind it.
      expect(bytes.subarray(-2)).toEqual(Buffer.from([0xff, 0xd9]));
    }
  });
});

test('the search for traces does find what a phone writes', async () => {
  expect(tracesIn(await photoOfAPhone())).toEqual(expect.arrayContaining(['Exif\0', SECRETS.camera, SECRETS.artist, 'xmpmeta']));
});

test.each([
  ['upright, turned by what the phone said', () => photoOfAPhone(400, 300), [300, 400], [240, 320]],
  ['at most 2,048 and 320 pixels a side', () => jpegOf(4_096, 1_024), [2_048, 512], [320, 80]],
  ['never larger than it was', () => jpegOf(100, 50), [100, 50], [100, 50]],
  ['a strip keeps a pixel of width', () => Promise.resolve(greyPng(20_000, 1, 20_001)), [2_048, 1], [320, 1]],
])('%s', async (_, sent, large, small) => {
  const made = await picturesOf(await sent());
  const { width, height } = await sharp(made.small.bytes).metadata();
  expect([[made.width, made.height], [width, height]]).toEqual([large, small]);
});

test('what can be seen through stands on white', async () => {
  const { large } = await picturesOf(await sharp({ create: { width: 10, height: 10, channels: 4, background: '#0000' } }).png().toBuffer());
  const { channels } = await sharp(large.bytes).stats();
  expect(channels.map(({ min }) => min)).toEqual([255, 255, 255]);
});

test('the same picture gives the same bytes, and so one file', async () => {
  const [one, other] = await Promise.all([jpegOf(500, 400), jpegOf(500, 400)].map(async (sent) => picturesOf(await sent)));
  expect(one?.large.hash).toEqual(other?.large.hash);
});
