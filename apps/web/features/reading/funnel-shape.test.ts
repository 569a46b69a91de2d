import type { FunnelStage } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { fatesOf, funnelRows } from './funnel-shape.ts';

const stage = (name: FunnelStage['stage'], reached: number, ends: Partial<FunnelStage>): FunnelStage => ({
  stage: name, reached, here: 0, donors: { reached: 1, here: 1, left: 1 }, goneOn: 0, died: {}, unaccounted: 0, notRooted: 0, thrownOut: 0, givenOut: 0,
  restuck: 0, mixedAway: 0, notFound: 0, ...ends,
});
// 400 stuck: 100 went on, 40 here, 20 given out, 240 lost.
const CUTTINGS = stage('cutting', 400, { goneOn: 100, here: 40, givenOut: 20, died: { rot: 100, dry: 40 }, unaccounted: 30, notRooted: 60, thrownOut: 10 });
const LINERS = stage('liner', 120, { here: 120 });

test('every plant of a stage is in one part', () => {
  expect(fatesOf(CUTTINGS)).toEqual({ goneOn: 100, here: 40, away: 20, lost: 240 });
});

test('parts are as wide as plants are many, and stand against each other from the middle outwards', () => {
  const [cutting, liner] = funnelRows([CUTTINGS, LINERS]);
  expect(cutting?.parts.map(({ fate, from, width }) => [fate, from, width])).toEqual([
    ['goneOn', 75, 25], ['here', 65, 10], ['away', 60, 5], ['lost', 0, 60],
  ]);
  expect(liner?.parts).toEqual([{ fate: 'here', plants: 120, from: 70, width: 30 }]);
});

test('a joint leads from what went on to what came, which is more where plants were received', () => {
  expect(funnelRows([CUTTINGS, LINERS])[1]?.joint).toEqual({ above: 25, below: 30 });
});

test('nothing at all is no bar, and breaks nothing', () => {
  expect(funnelRows([stage('cutting', 0, {})])).toEqual([{ stage: 'cutting', reached: 0, parts: [], joint: { above: 0, below: 0 } }]);
});

test('plants that came out of mixed batches do not count against those given out', () => {
  expect(fatesOf(stage('liner', 10, { here: 12, mixedAway: -2 })).away).toBe(0);
});
