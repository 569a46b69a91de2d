import type { WorkdaySummary } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { summaryLines, summaryText } from './summary-lines.ts';

const NOTHING = { stuck: 0, received: 0, lifted: 0, potted: 0, planted: 0, givenOut: 0, died: 0, unaccounted: 0, notRooted: 0, thrownOut: 0, batchesCounted: 0, countedAlive: 0, donorTrees: 0 };
const juniper = { taxonId: '1', name: 'Juniperus communis', commonName: 'juniper', ...NOTHING, stuck: 40, countedAlive: 25, batchesCounted: 2 };
const yew = { taxonId: '2', name: 'Taxus baccata', commonName: null, ...NOTHING, givenOut: 3 };
const summary: WorkdaySummary = {
  id: '1', day: '2026-03-29', place: 'House A', tasks: null, people: ['Sorrel T.'], adults: 3, children: 2, hours: 2.5, peopleHours: 7.5, entries: 4, species: [juniper, yew],
};
const words = {
  title: 'Workday 29 Mar 2026', who: ['3 adults, 2 children'], nameOf: ({ commonName, name }: { commonName: string | null; name: string | null }) => commonName ?? name ?? 'mixed',
  actOf: (act: string) => (act === 'counted' ? 'Counted alive' : act), inBatches: (n: number) => `in ${n} batches`, nothing: 'Nothing was logged.',
};

test('names what groups publish even at nought, and the rest only where it happened', () => {
  expect(summaryLines(summary).map(({ act, plants }) => [act, ...plants])).toEqual([
    ['stuck', 40, 0], ['potted', 0, 0], ['planted', 0, 0], ['givenOut', 0, 3], ['counted', 25, 0], ['died', 0, 0],
  ]);
});

test('is one line a species as text, without noughts and without anybody’s name that was not given', () => {
  expect(summaryText(summary, words)).toBe('Workday 29 Mar 2026\n3 adults, 2 children\njuniper: stuck 40, counted alive 25 in 2 batches\nTaxus baccata: givenout 3');
  expect(summaryText({ ...summary, species: [] }, words)).toContain('Nothing was logged.');
});
