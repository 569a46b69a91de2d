import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { encode } from 'uqr';
import { beforeAll, describe, expect, test } from 'vitest';
import { prepareZXingModule } from 'zxing-wasm/reader';
import { readWithWasm } from './wasm-reader.ts';

const LABEL = 'https://plants.example.org/l/K58Y9J69';

interface Drawn {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray<ArrayBuffer>;
}

/** Grey of each point of a picture, 0 to 255. */
type Shade = (x: number, y: number) => number;

beforeAll(async () => {
  const file = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
  await prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(file).buffer }, fireImmediately: true });
});

/** Modules of a label's code, so many points each, with its quiet zone. */
function label(says: string, points: number): { readonly side: number; readonly shade: Shade } {
  const { size, data } = encode(says, { ecc: 'Q', border: 4 });
  return { side: size * points, shade: (x, y) => (data[Math.floor(y / points)]?.[Math.floor(x / points)] ? 20 : 235) };
}

function draw(width: number, height: number, shade: Shade): Drawn {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) data.set([shade(x, y), shade(x, y), shade(x, y), 255], (y * width + x) * 4);
  }
  return { width, height, data };
}

/** The label lying in a picture, turned by so many degrees. */
function turned({ side, shade }: ReturnType<typeof label>, degrees: number): Drawn {
  const [whole, cos, sin] = [Math.ceil(side * 1.5), Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return draw(whole, whole, (x, y) => {
    const [dx, dy] = [x - whole / 2, y - whole / 2];
    const [u, v] = [dx * cos + dy * sin + side / 2, dy * cos - dx * sin + side / 2];
    return u < 0 || v < 0 || u >= side || v >= side ? 160 : shade(u, v);
  });
}

/** Each point the mean of all around it. */
const blurred = (shade: Shade, points: number): Shade => (x, y) => {
  let sum = 0;
  for (let dy = -points; dy <= points; dy += 1) for (let dx = -points; dx <= points; dx += 1) sum += shade(x + dx, y + dy);
  return sum / (2 * points + 1) ** 2;
};

const read = async (picture: Drawn) => (await readWithWasm(picture as unknown as ImageData)).map(({ text }) => text);

describe('reads a label', () => {
  test.each([0, 7, 45, 90, 133, 180, 271])('turned by %i degrees', async (degrees) => {
    expect(await read(turned(label(LABEL, 6), degrees))).toEqual([LABEL]);
  });

  test('with a tenth of it torn off', async () => {
    const { side, shade } = label(LABEL, 6);
    // A corner without a finder, one tenth of the area.
    const torn = side * Math.sqrt(0.1);
    expect(await read(draw(side, side, (x, y) => (x > side - torn && y > side - torn ? 235 : shade(x, y))))).toEqual([LABEL]);
  });

  test('out of focus by more than a module', async () => {
    const { side, shade } = label(LABEL, 4);
    expect(await read(draw(side, side, blurred(shade, 2)))).toEqual([LABEL]);
  });

  test('in poor light, three points a module', async () => {
    const { side, shade } = label(LABEL, 3);
    expect(await read(draw(side, side, (x, y) => 30 + shade(x, y) / 8))).toEqual([LABEL]);
  });

  test('says where each of two is', async () => {
    const [a, b] = [label('T1', 5), label('T2', 5)];
    const found = await readWithWasm(draw(a.side * 2, a.side, (x, y) => (x < a.side ? a.shade(x, y) : b.shade(x - a.side, y))) as unknown as ImageData);

    expect(found.sort((one, other) => one.x - other.x)).toEqual([{ text: 'T1', x: expect.closeTo(0.25, 1), y: expect.closeTo(0.5, 1) }, { text: 'T2', x: expect.closeTo(0.75, 1), y: expect.closeTo(0.5, 1) }]);
  });

  test('and nothing where there is none', async () => {
    expect(await read(draw(200, 200, (x, y) => ((x * 7 + y * 13) % 251)))).toEqual([]);
    const { side, shade } = label(LABEL, 6);
    // Half of it is gone: no guess.
    expect(await read(draw(side, side, (x, y) => (y > side / 2 ? 235 : shade(x, y))))).toEqual([]);
  });
});
