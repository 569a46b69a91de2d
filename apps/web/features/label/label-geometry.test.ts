import { diceOf, labelCodes } from '@sprigline/domain';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutOf, SMALLEST_MODULE } from './label-layout.ts';
import { addressOfLabel, labelQr, QUIET } from './label-qr.ts';
import { placedWords } from './label-words.ts';
import { correctionFor, CROSS, drawnAt, MOST_OFFSET, MOST_SCALE, type Printer, printedPart, printerOf, RULERS, TRUE_PRINTER, WHITE_EDGE } from './printer.ts';
import { labelAt, labelsOn, type LabelSheet, type Rectangle, SHEETS, sheetNamed } from './sheets.ts';

const SLIP = 1e-9;
const isWithin = ({ x, y, width, height }: Rectangle, of: { width: number; height: number }): boolean =>
  x >= -SLIP && y >= -SLIP && x + width <= of.width + SLIP && y + height <= of.height + SLIP;
const overlap = (a: Rectangle, b: Rectangle): boolean =>
  a.x + a.width > b.x + SLIP && b.x + b.width > a.x + SLIP && a.y + a.height > b.y + SLIP && b.y + b.height > a.y + SLIP;
const allOf = (sheet: LabelSheet, at: (nth: number) => Rectangle): Rectangle[] => Array.from({ length: labelsOn(sheet) }, (_, nth) => at(nth));

/** Every corner of what a printer may miss by. */
const ENDS: Printer[] = [-1, 0, 1].flatMap((x) => [-1, 0, 1].flatMap((y) => [-1, 0, 1].flatMap((across) => [-1, 0, 1].map((down) => ({
  offset: { x: x * MOST_OFFSET, y: y * MOST_OFFSET }, scale: { x: 1 + across * MOST_SCALE, y: 1 + down * MOST_SCALE },
})))));

describe('sheets', () => {
  test('are known by their dimensions: four of A4, three of Letter, and single labels', () => {
    const of = (paper: string) => SHEETS.filter((sheet) => sheet.paper === paper).length;
    expect([of('A4'), of('Letter'), of('roll')].map((n, at) => n >= [4, 3, 2][at]!)).toEqual([true, true, true]);
    expect(new Set(SHEETS.map(({ id }) => id)).size).toBe(SHEETS.length);
    expect(sheetNamed('a4-3x8-70x37')).toMatchObject({ columns: 3, rows: 8, label: { width: 70, height: 37 } });
    expect(sheetNamed('no such')).toBe(SHEETS[0]);
  });

  test.each(SHEETS.map((sheet) => [sheet.id, sheet] as const))('%s: no label leaves its paper, and none lies on another', (_, sheet) => {
    const labels = allOf(sheet, (nth) => labelAt(sheet, nth));
    expect(labels.filter((label) => !isWithin(label, sheet))).toEqual([]);
    expect(labels.flatMap((label, at) => labels.slice(at + 1).filter((other) => overlap(label, other)))).toEqual([]);
  });

  test.each(SHEETS.map((sheet) => [sheet.id, sheet] as const))('%s: nor does it by any printer that is corrected', (_, sheet) => {
    for (const printer of ENDS) {
      const { printer: corrected } = correctionFor(sheet, printer);
      const drawn = allOf(sheet, (nth) => printedPart(drawnAt(sheet, nth, corrected)));
      expect(drawn.filter((label) => !isWithin(label, sheet))).toEqual([]);
      expect(drawn.flatMap((label, at) => drawn.slice(at + 1).filter((other) => overlap(label, other)))).toEqual([]);
    }
  });
});

describe('a printer', () => {
  test('is known from four measures: what is drawn for it comes out in its place', () => {
    fc.assert(fc.property(fc.double({ min: -2.9, max: 2.9, noNaN: true }), fc.double({ min: -2.9, max: 2.9, noNaN: true }), fc.double({ min: 0.981, max: 1.019, noNaN: true }), fc.double({ min: 0.981, max: 1.019, noNaN: true }), (x, y, across, down) => {
      const misses = (at: { x: number; y: number }) => ({ x: at.x * across + x, y: at.y * down + y });
      const cross = misses(CROSS);
      const printer = printerOf({ left: cross.x, top: cross.y, across: RULERS.across * across, down: RULERS.down * down })!;
      const sheet = sheetNamed('a4-3x7-63.5x38.1');
      for (const nth of [0, 11, 20]) {
        const [meant, came] = [labelAt(sheet, nth), misses(drawnAt(sheet, nth, printer))];
        expect(Math.abs(came.x - meant.x)).toBeLessThan(1e-6);
        expect(Math.abs(came.y - meant.y)).toBeLessThan(1e-6);
      }
    }));
  });

  test('that prints true needs no correction; one that is far off is not believed', () => {
    expect(printerOf({ left: CROSS.x, top: CROSS.y, ...RULERS })).toEqual(TRUE_PRINTER);
    // "Fit to page" makes a page three to six hundredths smaller.
    expect(printerOf({ left: 42, top: 42, across: 115, down: 172 })).toBeUndefined();
    expect(printerOf({ left: Number.NaN, top: 40, across: 120, down: 180 })).toBeUndefined();
  });

  test('is corrected wholly on a sheet with margins, and in part on one without', () => {
    const printer: Printer = { offset: { x: 2, y: 2 }, scale: { x: 1, y: 1 } };
    expect(correctionFor(sheetNamed('a4-3x7-63.5x38.1'), printer)).toEqual({ printer, isLess: false });
    const { printer: some, isLess } = correctionFor(sheetNamed('a4-3x8-70x37'), printer);
    expect([isLess, some.offset.x > 1, some.offset.x < 2]).toEqual([true, true, true]);
  });
});

describe('a code on a label', () => {
  const code = labelCodes(diceOf(5), 1)[0]!;

  test('holds the address in capitals, and what only some of it may be in as it is written', () => {
    expect(addressOfLabel('https://plants.example.org', code)).toBe(`HTTPS://PLANTS.EXAMPLE.ORG/L/${code}`);
    expect(addressOfLabel('http://localhost:3000', 'SG07-T1')).toBe('HTTP://LOCALHOST:3000/L/SG07-T1');
    expect(addressOfLabel('https://example.org/Trees', code)).toBe(`https://example.org/Trees/l/${code}`);
    expect(addressOfLabel('https://plants.example.org', 'Bench 3/ä')).toBe('https://plants.example.org/l/Bench%203%2F%C3%A4');
  });

  test('is of version 4 at most, with the strongest protection that fits', () => {
    expect([labelQr('https://plants.example.org', code, false)?.modules, labelQr('https://plants.example.org', code, true)?.modules]).toEqual([29, 33]);
    const long = `https://${'nursery.'.repeat(7)}example.org`;
    expect(labelQr(long, code, true)?.modules).toBe(33);
    expect(labelQr(`https://${'nursery.'.repeat(20)}example.org`, code, true)).toBeUndefined();
  });

  test.each(SHEETS.map((sheet) => [sheet.id, sheet] as const))('%s: has modules of half a millimetre or more, white around it, and room for words', (_, { label }) => {
    for (const [modules, isWaterproof] of [[25, false], [29, false], [33, false], [33, true]] as const) {
      const { module, code: square, words } = layoutOf(label, modules, isWaterproof);
      expect(module).toBeGreaterThanOrEqual(SMALLEST_MODULE);
      const quiet = QUIET * module!;
      expect(isWithin({ x: square!.x - quiet, y: square!.y - quiet, width: square!.width + 2 * quiet, height: square!.height + 2 * quiet }, label)).toBe(true);
      expect(overlap({ ...square!, width: square!.width + quiet }, words)).toBe(false);
      expect(isWithin({ ...words, x: words.x + WHITE_EDGE, y: words.y + WHITE_EDGE }, label)).toBe(true);
      expect(words.width).toBeGreaterThan(9);
    }
  });
});

describe('words on a label', () => {
  /** Letters of half their height. */
  const widthOf = (text: string) => text.length * 0.5;
  const says = { code: 'K58Y 9J69', title: 'A donor tree with a long name indeed', more: ['stuck 12 Mar 2026', 'cutting', 'Juniperus communis'] };

  test.each([[30, 56], [52, 60], [110, 100], [250, 180]])('stay inside a room of %d x %d points, the code whole', (width, height) => {
    for (const isWaterproof of [false, true]) {
      const lines = placedWords(says, { width, height }, widthOf, isWaterproof);
      for (const { text, size, y } of lines) {
        expect(widthOf(text) * size).toBeLessThanOrEqual(width + 1e-6);
        expect(y + size).toBeLessThanOrEqual(height + 1e-6);
      }
      expect(lines.map(({ text }) => text).join(' ')).toContain('K58Y 9J69');
    }
  });

  test('the species is left out before the stage, and the stage before the day', () => {
    const lines = placedWords(says, { width: 110, height: 30 }, widthOf, false).map(({ text }) => text);
    expect(lines.slice(0, 2)).toEqual(['K58Y 9J69', expect.stringMatching(/^A donor tree/)]);
    expect(lines).toContain('stuck 12 Mar 2026');
    expect(lines).not.toContain('Juniperus communis');
  });

  test('a label of somebody’s own is set smaller rather than cut', () => {
    const long = 'SG07-2026-TRAY-0012-HEEL-TALC-3';
    expect(placedWords({ code: long, more: [] }, { width: 60, height: 60 }, widthOf, false)[0]!.text).toBe(long);
  });
});
