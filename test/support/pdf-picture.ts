import { inflateSync } from 'node:zlib';

/** What a reader of codes takes, like a browser's ImageData. */
export interface Picture {
  readonly data: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

type Matrix = readonly [number, number, number, number, number, number];

/** One after the other, as `cm` in a PDF says it (ISO 32000-1, 8.3.4). */
const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + l];

/**
 * The pages of a PDF as pictures in black on white: its filled rectangles and nothing else, so codes and no words. For PDFs as
 * our own label printer makes them, not for any other.
 *
 * @param dotsPerMm of the pictures
 */
export function pdfPictures(pdf: Buffer, dotsPerMm: number): Picture[] {
  const text = pdf.toString('latin1');
  const streams = new Map([...text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, at = '', body = '']) => [at, body]));
  return [...streams.values()].filter((body) => /\/Type \/Page\b/.test(body)).map((page) => {
    const [width = 0, height = 0] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page)?.slice(1).map(Number) ?? [];
    const contents = streams.get(/\/Contents (\d+) 0 R/.exec(page)?.[1] ?? '') ?? '';
    const drawn = inflateSync(Buffer.from(contents.split('\nstream\n')[1] ?? '', 'latin1')).toString('latin1');
    return pictureOf(drawn, width, height, (dotsPerMm * 25.4) / 72);
  });
}

function pictureOf(drawn: string, pageWidth: number, pageHeight: number, dots: number): Picture {
  const [width, height] = [Math.ceil(pageWidth * dots), Math.ceil(pageHeight * dots)];
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (const { x, y, w, h } of filledIn(drawn)) {
    const [left, right] = [x, x + w].map((at) => Math.round(at * dots)).sort((a, b) => a - b) as [number, number];
    // A PDF counts from below.
    const [top, bottom] = [pageHeight - y, pageHeight - y - h].map((at) => Math.round(at * dots)).sort((a, b) => a - b) as [number, number];
    for (let row = Math.max(top, 0); row < Math.min(bottom, height); row += 1) {
      for (let column = Math.max(left, 0); column < Math.min(right, width); column += 1) data.fill(0, (row * width + column) * 4, (row * width + column) * 4 + 3);
    }
  }
  return { data, width, height };
}

/** Rectangles that are filled, in points of the page. */
function filledIn(drawn: string): { x: number; y: number; w: number; h: number }[] {
  const filled: { x: number; y: number; w: number; h: number }[] = [];
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let path: { x: number; y: number; w: number; h: number }[] = [];
  for (const line of drawn.split('\n')) {
    const parts = line.trim().split(' ');
    const act = parts.pop();
    const numbers = parts.map(Number);
    if (act === 'q') kept.push(matrix);
    else if (act === 'Q') matrix = kept.pop() ?? matrix;
    else if (act === 'cm') matrix = times(numbers as unknown as Matrix, matrix);
    else if (act === 're') path.push(on(matrix, numbers));
    else if (act === 'f') filled.push(...path.splice(0));
    else if (act === 'S' || act === 'n') path = [];
  }
  return filled;
}

/** None of our pages is turned, so a rectangle stays one. */
const on = ([a, , , d, e, f]: Matrix, [x = 0, y = 0, w = 0, h = 0]: number[]) => ({ x: a * x + e, y: d * y + f, w: a * w, h: d * h });
