import type { FunnelStage } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { lossesOf } from './losses.ts';

const stage = (name: FunnelStage['stage'], rest: Partial<FunnelStage>): FunnelStage => ({
  stage: name, reached: 90, here: 0, goneOn: 0, died: {}, unaccounted: 0, notRooted: 0, thrownOut: 0, givenOut: 0, restuck: 0, mixedAway: 0, notFound: 0,
  donors: { reached: 1, here: 1, left: 1 }, ...rest,
});

test('ways of loss over all stages, most first, deaths by cause, without those that took none', () => {
  const losses = lossesOf([stage('cutting', { died: { mould: 7, insects: 2 }, notRooted: 30, givenOut: 5 }), stage('liner', { died: { insects: 6 } })]);

  expect(losses.map(({ way, cause, plants }) => [way, cause, plants])).toEqual([['notRooted', undefined, 30], ['died', 'insects', 8], ['died', 'mould', 7]]);
  expect(losses[1]?.at).toMatchObject({ cutting: 2, liner: 6 });
});
