import { describe, expect, test } from 'vitest';
import { sheetChanges, type EarlierRow } from './sheet-changes.ts';
import type { SheetFact } from './sheet.ts';

const count = (row: number, label: string, day: string, n: number): SheetFact => ({ row, act: 'counted', day, label, n });
const sheet = [count(2, 'T1', '2025-01-01', 10), count(3, 'T1', '2025-02-01', 9), count(4, 'T1', '2025-02-01', 9), count(5, 'T2', '2025-01-01', 7)];
const before: EarlierRow[] = sheet.map(({ row, ...fact }) => ({ entryId: `entry of row ${row}`, fact }));

describe('sheetChanges', () => {
  test('the same sheet again brings nothing, equal rows included', () => {
    expect(sheetChanges(sheet, before)).toMatchObject({ added: [], changed: [], gone: [] });
  });

  test('rows added bring only those, wherever they stand', () => {
    const added = count(9, 'T3', '2025-01-01', 5);

    expect(sheetChanges([added, ...sheet], before)).toMatchObject({ added: [added], changed: [], gone: [] });
  });

  test('a third equal row is one row more', () => {
    expect(sheetChanges([...sheet, count(6, 'T1', '2025-02-01', 9)], before).added).toHaveLength(1);
  });

  test('another number on the same day is a changed row', () => {
    const [first, ...others] = sheet as [SheetFact, ...SheetFact[]];
    const mended = { ...first, n: 11 };

    expect(sheetChanges([mended, ...others], before)).toMatchObject({ added: [], gone: [], changed: [{ fact: mended, earlier: { entryId: 'entry of row 2' } }] });
  });

  test('another day with the same number is a changed row', () => {
    const moved = { ...(sheet[3] as SheetFact), day: '2025-01-02' };

    expect(sheetChanges([...sheet.slice(0, 3), moved], before).changed).toHaveLength(1);
  });

  test('where the partner is not clear, a row counts as added and the earlier ones as gone', () => {
    const twice = [count(3, 'T1', '2025-02-01', 8), count(4, 'T1', '2025-02-01', 7)];
    const result = sheetChanges([sheet[0] as SheetFact, ...twice, sheet[3] as SheetFact], before);

    expect(result).toMatchObject({ changed: [], added: twice });
    expect(result.gone).toHaveLength(2);
  });
});
