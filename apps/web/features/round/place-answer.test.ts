import type { TapState } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { entriesOfPlace, newlyBad, placeAfter } from './place-answer.ts';

const state = (tap: TapState['tap'], more: Partial<TapState> = {}): TapState => ({ tap, isAsked: true, last: null, lastGoodOn: null, open: null, ...more });
const taps = [state('heat', { lastGoodOn: '2026-11-20' }), state('lights'), state('mould', { open: { entryId: 'e', since: '2026-11-19' } })];
const around = { day: '2026-11-27', seenBy: '' };

test('what was tapped is one entry; what is newly wrong opens an incident from the last good day on', () => {
  const heat = placeAfter(undefined, 'heat', 'no', 600);
  const both = placeAfter(heat, 'lights', 'yes', 601);
  const entries = entriesOfPlace('p', both, taps, around);
  expect(entries.map(({ saying }) => saying)).toEqual([
    { kind: 'noted', placeId: 'p', conditions: { heat: 'no', lights: 'yes' } },
    { kind: 'incident', placeId: 'p', what: 'heatOff', severity: 'serious', lastGoodOn: '2026-11-20' },
  ]);
  expect(entries[0]?.id).toBe(heat?.ids['found']);
});

test('what is known to be wrong is not opened twice, and what is not here is not wrong', () => {
  expect(newlyBad({ mould: 'yes', lights: 'notHere' }, taps)).toEqual([]);
});

test('tapped again it is not said, and nothing said is nothing sent', () => {
  const answer = placeAfter(placeAfter(undefined, 'heat', 'no', 600), 'heat', 'no', 600);
  expect(entriesOfPlace('p', answer, taps, around)).toEqual([]);
});

test('a walk before the last good day does not begin after it ended', () => {
  const [, incident] = entriesOfPlace('p', placeAfter(undefined, 'heat', 'no', undefined), taps, { day: '2026-11-10', seenBy: 'x' });
  expect(incident).toMatchObject({ seenBy: 'x', observedOn: '2026-11-10' });
  expect(incident?.saying).not.toHaveProperty('lastGoodOn');
});
