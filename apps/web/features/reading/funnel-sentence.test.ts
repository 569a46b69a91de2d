import type { FunnelStage } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { sumsOf } from './funnel-sentence.ts';

const stage = (name: FunnelStage['stage'], reached: number, goneOn: number, here: number): FunnelStage => ({
  stage: name, reached, goneOn, here, donors: { reached: 1, here: 1, left: 1 }, died: {}, unaccounted: 0, notRooted: 0, thrownOut: 0, givenOut: 0, restuck: 0, mixedAway: 0, notFound: 0,
});

test('a plant that went through three stages is one plant', () => {
  const stages = [stage('cutting', 400, 150, 20), stage('liner', 150, 60, 40), stage('potted', 60, 30, 25), stage('planted', 30, 0, 28)];
  expect(sumsOf({ stages, donors: { came: 12, left: 8 } })).toEqual({ n: 400, areCuttings: true, donors: 12, here: 113, planted: 28, left: 8 });
});

test('plants received as young plants are counted, and not called cuttings', () => {
  const stages = [stage('cutting', 40, 10, 0), stage('liner', 25, 0, 25), stage('potted', 0, 0, 0), stage('planted', 0, 0, 0)];
  expect(sumsOf({ stages, donors: { came: 2, left: 2 } })).toMatchObject({ n: 55, areCuttings: false });
});
