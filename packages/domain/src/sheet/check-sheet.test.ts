import { describe, expect, test } from 'vitest';
import { checkSheet, type KnownToProgramme } from './check-sheet.ts';
import type { SheetFact } from './sheet.ts';

const NOTHING: KnownToProgramme = { batches: new Map(), donors: new Map() };
const TODAY = '2026-11-25';
const stuck = (row: number, label: string, donor = 'SG-01', stand = 'Skell Gill'): SheetFact => ({
  row, act: 'stuck', day: '2024-10-07', label, n: 12, donor, stand, species: 'Juniperus communis', place: 'House A',
});
const act = (row: number, what: SheetFact['act'], label: string, toLabel?: string): SheetFact => ({
  row, act: what, day: '2025-05-01', label, toLabel, n: 3, place: 'Frame 1',
});
const codes = (facts: SheetFact[], known = NOTHING) => checkSheet(facts, known, TODAY).map(({ row, code, other }) => ({ row, code, ...(other !== undefined && { other }) }));

describe('checkSheet', () => {
  test('finds nothing in a line from cutting to site, whatever the order of its rows', () => {
    const line = [stuck(2, 'T1'), act(3, 'lifted', 'T1', 'T2'), act(4, 'potted', 'T2', 'T3'), act(5, 'planted', 'T3', 'T4'), act(6, 'counted', 'T4')];

    expect(codes(line)).toEqual([]);
    expect(codes(line.toReversed())).toEqual([]);
  });

  test('a label that nobody made', () => {
    expect(codes([act(2, 'counted', 'T9')])).toEqual([{ row: 2, code: 'label-unknown' }]);
  });

  test('a label of two donor trees, and one stuck twice', () => {
    expect(codes([stuck(2, 'T1'), stuck(3, 'T1', 'SG-02')])).toEqual([{ row: 3, code: 'label-of-two-donors', other: 2 }]);
    expect(codes([stuck(2, 'T1'), stuck(3, 'T1')])).toEqual([{ row: 3, code: 'label-stuck-twice', other: 2 }]);
  });

  test('two stickings into one label', () => {
    expect(codes([stuck(2, 'T1'), stuck(3, 'T2', 'SG-02'), act(4, 'lifted', 'T1', 'T3'), act(5, 'lifted', 'T2', 'T3')])).toEqual([
      { row: 5, code: 'label-of-another-sticking', other: 4 },
    ]);
  });

  test('lifting twice into one label of the same sticking is a join', () => {
    expect(codes([stuck(2, 'T1'), act(3, 'lifted', 'T1', 'T2'), act(4, 'lifted', 'T1', 'T2')])).toEqual([]);
  });

  test('plants that went back a stage', () => {
    expect(codes([stuck(2, 'T1'), act(3, 'potted', 'T1', 'T2'), act(4, 'lifted', 'T2', 'T3')])).toContainEqual({ row: 4, code: 'stage-gone-back', other: 3 });
  });

  test('a donor tree in two stands', () => {
    expect(codes([stuck(2, 'T1'), stuck(3, 'T2', 'sg-01', 'Corran Ridge')])).toEqual([{ row: 3, code: 'donor-in-two-stands', other: 2 }]);
  });

  test('capitals and spaces make no second stand', () => {
    expect(codes([stuck(2, 'T1'), stuck(3, 'T2', 'SG-01', ' SKELL  GILL')])).toEqual([]);
  });

  test('a new donor tree needs its stand and species; a known one does not', () => {
    const bare = { ...stuck(2, 'T1'), stand: undefined, species: undefined };

    expect(codes([bare])).toEqual([{ row: 2, code: 'stand-missing' }, { row: 2, code: 'species-missing' }]);
    expect(codes([bare], { ...NOTHING, donors: new Map([['sg-01', { stand: 'Skell Gill', species: 'Juniperus communis' }]]) })).toEqual([]);
  });

  test('a day that has not come yet', () => {
    expect(codes([{ ...stuck(2, 'T1'), day: '2026-11-26' }])).toEqual([{ row: 2, code: 'day-in-future' }]);
  });
});
