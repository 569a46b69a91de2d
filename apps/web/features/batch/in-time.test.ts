import type { HistoryItem, StayShown } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { inTime } from './in-time.ts';

const entry = (id: string, observedOn: string): HistoryItem => ({
  id, kind: 'noted', observedOn, minute: null, said: { kind: 'noted' }, note: null, seenBy: null, writtenBy: null, writtenAt: '', receivedAt: '', door: 'desk',
  now: null, latestVersionId: id, corrections: [], movements: [], flags: [], mayMend: false,
});
const incident = (entryId: string, from: string) => ({ entryId, what: 'frost' as const, severity: 'slight' as const, from, until: null, detail: null, placeName: 'Bench A' });
const treatment = (entryId: string, day: string) => ({ entryId, what: 'spray' as const, day, product: null, placeName: 'Bench A' });
const stay = (from: string, more: Partial<StayShown> = {}): StayShown => ({ place: null, from, until: null, incidents: [], treatments: [], ...more });

test('what happened where it stood comes after the entries of that day', () => {
  const told = inTime([entry('a', '2026-01-01'), entry('b', '2026-01-05'), entry('c', '2026-01-09')], [
    stay('2026-01-01', { incidents: [incident('frost', '2026-01-05')], treatments: [treatment('late', '2026-02-01'), treatment('spray', '2026-01-03')] }),
  ]);
  expect(told.map(({ id }) => id)).toEqual(['a', 'spray', 'b', 'frost', 'c', 'late']);
});

test('an incident is told once, from the day on which the batch came', () => {
  const frost = incident('frost', '2025-12-01');
  const told = inTime([entry('a', '2026-01-01')], [stay('2026-01-01', { incidents: [frost] }), stay('2026-02-01', { incidents: [frost] })]);
  expect(told.map(({ id, day }) => [id, day])).toEqual([['a', '2026-01-01'], ['frost', '2026-01-01']]);
});

test('a mended day counts as it is now', () => {
  const mended: HistoryItem = { ...entry('a', '2026-01-01'), now: { observedOn: '2026-01-10', minute: null, said: { kind: 'noted' } } };
  expect(inTime([mended], [stay('2026-01-01', { treatments: [treatment('spray', '2026-01-03')] })]).map(({ id }) => id)).toEqual(['spray', 'a']);
});
