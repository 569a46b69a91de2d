import { describe, expect, test } from 'vitest';
import { labelsAsked, queryOfLabels, searchOf } from './label-choice.ts';
import { printerSaid, printSettings, sayPrinter } from './print-settings.ts';
import { TRUE_PRINTER } from './printer.ts';

const asked = (query: string) => printSettings(new URLSearchParams(query));

describe('settings of a print', () => {
  test('are read from an address', () => {
    expect(asked('sheet=a4-4x10-48.5x25.4&start=40&copies=2&wet=on&printer=1.50_-0.50_0.9980_1.0030')).toMatchObject({
      sheet: { columns: 4 }, start: 40, copies: 2, isWaterproof: true, hasLines: false, printer: { offset: { x: 1.5, y: -0.5 }, scale: { x: 0.998, y: 1.003 } },
    });
  });

  test.each(['', 'sheet=none&start=0&copies=9&printer=far', 'start=25', 'start=1.5', 'start=x', 'printer=9_0_1_1', 'printer=0_0_1.5_1'])('of which something makes no sense print a whole sheet: "%s"', (query) => {
    expect(asked(query)).toMatchObject({ sheet: { id: 'a4-3x8-70x37' }, start: 1, copies: 1, isWaterproof: false, printer: TRUE_PRINTER });
  });

  test('tell a printer and know it again', () => {
    const printer = { offset: { x: -2.25, y: 3 }, scale: { x: 0.98, y: 1.02 } };
    expect(printerSaid(sayPrinter(printer))).toEqual(printer);
    expect(printerSaid(undefined)).toBeUndefined();
  });
});

test('which labels is said by a place, by a stand, or by ids however they come', () => {
  expect(queryOfLabels(labelsAsked(new URLSearchParams('of=donorTrees&standId=s')))).toBe('of=donorTrees&standId=s');
  expect(queryOfLabels(labelsAsked(searchOf({ of: 'batches', placeId: 'p', ids: ['a', 'b,c'], more: undefined })))).toBe('of=batches&ids=a%2Cb%2Cc');
  expect(labelsAsked(new URLSearchParams('of=people&placeId='))).toEqual({ of: 'batches', placeId: undefined, standId: undefined, ids: [] });
});
