import { inflateSync } from 'node:zlib';

/**
 * The words on the pages of a PDF as our own renderer makes them: streams deflated, letters numbered anew in every
 * font, each font with its table back to Unicode. Not a reader for any other PDF.
 */
export function pdfText(pdf: Buffer): string {
  const things = thingsIn(pdf.toString('latin1'));
  const pages = [...things.values()].filter(({ head }) => /\/Type \/Page\b/.test(head));
  return pages.map(({ head }) => {
    const fonts = new Map([...one(things, head, 'Resources').head.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name = '', at = '']) => [name, lettersOf(one(things, things.get(at)?.head ?? '', 'ToUnicode').stream)]));
    return wordsOf(one(things, head, 'Contents').stream, fonts);
  }).join('\n');
}

interface Thing {
  readonly head: string;
  readonly stream: string;
}

function thingsIn(pdf: string): ReadonlyMap<string, Thing> {
  const things = new Map<string, Thing>();
  for (const [, at = '', body = ''] of pdf.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const [head = '', stream] = body.split('\nstream\n');
    things.set(at, { head, stream: stream === undefined || !head.includes('/FlateDecode') ? '' : inflateSync(Buffer.from(stream, 'latin1')).toString('latin1') });
  }
  return things;
}

/** What `/Name 12 0 R` points to. */
const one = (things: ReadonlyMap<string, Thing>, head: string, name: string): Thing => things.get(new RegExp(`/${name} (\\d+) 0 R`).exec(head)?.[1] ?? '') ?? { head: '', stream: '' };

/** Number of a letter in the font, in hexadecimal, to the letter; one number may stand for two letters that are drawn as one. */
function lettersOf(table: string): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  for (const [, first = '', list = ''] of table.matchAll(/<(\w{4})> <\w{4}> \[([^\]]*)\]/g)) {
    [...list.matchAll(/<([\w ]*)>/g)].forEach(([, units = ''], at) => letters.set((parseInt(first, 16) + at).toString(16).padStart(4, '0'), unicode(units)));
  }
  return letters;
}

const unicode = (units: string): string => String.fromCharCode(...(units.match(/\w{4}/g) ?? []).map((unit) => parseInt(unit, 16)));

/** Runs stand where they were set, so those of one line follow each other: a change of font is no gap. */
function wordsOf(stream: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): string {
  let letters: ReadonlyMap<string, string> | undefined;
  let words = '';
  for (const [, font, run] of stream.matchAll(/\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)) {
    if (font !== undefined) letters = fonts.get(font);
    else for (const [, numbers = ''] of (run ?? '').matchAll(/<(\w*)>/g)) words += (numbers.match(/\w{4}/g) ?? []).map((number) => letters?.get(number) ?? '\uFFFD').join('');
  }
  return words;
}
