import { describe, expect, test } from 'vitest';
import { readRow } from './read-row.ts';
import type { SheetPlan } from './sheet.ts';

const COLUMNS = { date: 0, what: 1, label: 2, count: 3, rooted: 4, toLabel: 5, place: 6, cause: 7, donor: 8, notes: 9 };
const PLAN: SheetPlan = {
  columns: COLUMNS,
  acts: { stuck: 'stuck', counted: 'counted', died: 'died', 'thrown out': 'thrownOut', lifted: 'lifted', given: 'givenOut' },
  dayOrder: 'ymd',
  spellings: { cause: { mold: 'mould' } },
  looks: { withRoots: 'tug', withoutRoots: 'look' },
};
const row = (told: Partial<Record<keyof typeof COLUMNS, string>>) => {
  const cells = Array.from({ length: 10 }, () => '');
  for (const [field, text] of Object.entries({ date: '2025-05-01', what: 'counted', label: 'T001', count: '12', ...told })) {
    cells[COLUMNS[field as keyof typeof COLUMNS]] = text;
  }
  return readRow(cells, 7, PLAN);
};

describe('readRow', () => {
  test('reads a count with roots', () => {
    expect(row({ rooted: '5' }).fact).toMatchObject({ row: 7, act: 'counted', day: '2025-05-01', label: 'T001', n: 12, rooted: 5 });
  });

  test('a blank is not 0, and 0 is not a blank', () => {
    expect(row({ rooted: ' ' }).fact?.rooted).toBeUndefined();
    expect(row({ rooted: '0' }).fact?.rooted).toBe(0);
    expect(row({ count: '0' }).fact?.n).toBe(0);
  });

  test('labels are codes: capitals and spaces mean nothing', () => {
    expect(row({ label: ' t001 ' }).fact?.label).toBe('T001');
  });

  test('thrown out for want of roots is the verdict over the tray', () => {
    expect(row({ what: 'Thrown out', cause: 'No  roots' }).fact?.act).toBe('called');
    expect(row({ what: 'thrown out', cause: 'broken' }).fact?.act).toBe('thrownOut');
  });

  test('joins spellings as the plan says', () => {
    expect(row({ what: 'died', cause: ' Mold ' }).fact?.cause).toBe('mould');
  });

  test('a spreadsheet’s 12.0 is 12', () => {
    expect(row({ count: '12.0' }).fact?.n).toBe(12);
  });

  test.each([
    ['day-missing', { date: '' }],
    ['day-unreadable', { date: '31/04/2025' }],
    ['act-missing', { what: '' }],
    ['act-unknown', { what: 'watered' }],
    ['label-missing', { label: '  ' }],
    ['count-missing', { count: '' }],
    ['count-unreadable', { count: 'twelve' }],
    ['count-unreadable', { count: '-3' }],
    ['count-unreadable', { count: '2.5' }],
    ['count-unreadable', { what: 'died', count: '0' }],
    ['count-too-large', { count: '99999999' }],
    ['rooted-unreadable', { rooted: 'some' }],
    ['rooted-above-alive', { count: '12', rooted: '13' }],
    ['to-label-missing', { what: 'lifted', place: 'Frame 1' }],
    ['to-label-same', { what: 'lifted', place: 'Frame 1', toLabel: 't001' }],
    ['place-missing', { what: 'lifted', toLabel: 'T002' }],
    ['donor-missing', { what: 'stuck', place: 'House A' }],
    ['formula', { notes: '=cmd()' }],
    ['too-long', { cause: 'x'.repeat(201) }],
  ])('finds %s', (code, told) => {
    const { fact, faults } = row(told);

    expect(faults.map((fault) => fault.code)).toContain(code);
    expect(fact).toBeUndefined();
  });

  test('tells every fault of a row at once, with what stands there', () => {
    expect(row({ date: 'soon', count: 'many' }).faults).toEqual([
      { row: 7, field: 'date', code: 'day-unreadable', seen: 'soon' },
      { row: 7, field: 'count', code: 'count-unreadable', seen: 'many' },
    ]);
  });
});
