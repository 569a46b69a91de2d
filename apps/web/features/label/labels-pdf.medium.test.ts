import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { buffer } from 'node:stream/consumers';
import { diceOf, labelCodes, shownLabelCode } from '@sprigline/domain';
import { beforeAll, describe, expect, test } from 'vitest';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { pdfPictures } from '../../../../test/support/pdf-picture.ts';
import { pdfText } from '../../../../test/support/pdf-text.ts';
import { labelQr } from './label-qr.ts';
import { labelsPdf, type LabelPrint, type PrintedLabel } from './labels-pdf.ts';
import { TRUE_PRINTER } from './printer.ts';
import { labelsOn, SHEETS, sheetNamed } from './sheets.ts';

const ADDRESS = 'https://plants.example.org';
/** Fine enough for a module of half a millimetre, coarse enough for a page in a second. */
const DOTS = 6;

beforeAll(() => prepareZXingModule({
  overrides: { wasmBinary: Uint8Array.from(readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'))).buffer },
  fireImmediately: true,
}));

type Print = LabelPrint & { readonly codes: readonly string[] };

function printOf(n: number, more: Partial<LabelPrint> = {}): Print {
  const codes = labelCodes(diceOf(4), n);
  const isWaterproof = more.isWaterproof ?? false;
  return {
    codes,
    title: 'Labels', language: 'en', sheet: SHEETS[0]!, printer: TRUE_PRINTER, start: 1, isWaterproof, hasLines: false,
    labels: labelsOf(codes, isWaterproof),
    ...more,
  };
}
function* labelsOf(codes: readonly string[], isWaterproof: boolean): Iterable<PrintedLabel> {
  for (const code of codes) yield { code: shownLabelCode(code), qr: labelQr(ADDRESS, code, isWaterproof), title: 'CR-1', more: ['stuck 12 Mar 2026', 'Żółty bench'] };
}

const saidOn = ({ codes }: Print) => codes.map((code) => `HTTPS://PLANTS.EXAMPLE.ORG/L/${code}`).sort();

async function readBack(print: LabelPrint): Promise<string[]> {
  const read: string[] = [];
  for (const picture of pdfPictures(await buffer(labelsPdf(print)), DOTS)) {
    const found = await readBarcodes({ ...picture, colorSpace: 'srgb' } as ImageData, { formats: ['QRCode'], maxNumberOfSymbols: 255, tryHarder: true });
    read.push(...found.filter(({ isValid }) => isValid).map(({ text }) => text));
  }
  return read.sort();
}

describe('a sheet of labels', () => {
  // Every second one for a wet bench: larger codes that bear more.
  test.each(SHEETS.map((sheet, at) => [sheet.id, sheet, at % 2 === 1] as const))('%s is read again code by code, also on its next page', async (_, sheet, isWaterproof) => {
    const print = printOf(6, { sheet, isWaterproof, hasLines: !isWaterproof, start: labelsOn(sheet) - 2 });
    expect(await readBack(print)).toEqual(saidOn(print));
  });

  test('by a printer that misses is read too, also where a sheet was begun before', async () => {
    const print = printOf(16, { start: 10, printer: { offset: { x: 2.4, y: -3 }, scale: { x: 1.02, y: 0.985 } } });
    expect(await readBack(print)).toEqual(saidOn(print));
  });

  test('says each code, in letters of both files of the typeface, and begins where the sheet is still whole', async () => {
    const print = printOf(5, { sheet: sheetNamed('a4-3x7-63.5x38.1'), start: 20 });
    const pages = pdfText(await buffer(labelsPdf(print))).split('\n');
    expect(pages).toHaveLength(2);
    for (const [at, page] of [[0, 0], [1, 0], [2, 1], [4, 1]] as const) expect(pages[page]).toContain(shownLabelCode(print.codes[at]!));
    expect(pages[0]).toContain('Żółty bench');
  });

  test('of many labels lets others have their turn', async () => {
    let turns = 0;
    const clock = setInterval(() => { turns += 1; }, 1);
    const pdf = await buffer(labelsPdf(printOf(96)));
    clearInterval(clock);
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(4);
    // Many times a page; how long one waits is measured elsewhere, since it depends on the machine.
    expect(turns).toBeGreaterThan(24);
  });

  test('that nobody waits for any more is not drawn to its end', async () => {
    const stream = labelsPdf(printOf(1000));
    stream.once('data', () => stream.destroy());
    await new Promise((closed) => { stream.once('close', closed); });
    expect(stream.destroyed).toBe(true);
  });
});
