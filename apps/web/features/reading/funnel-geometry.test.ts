import type { FunnelStage } from '@sprigline/contract';
import { describe, expect, test } from 'vitest';
import { funnelRows } from './funnel-geometry.ts';

const stage = (name: FunnelStage['stage'], reached: number, here: number, donors: { reached: number; here: number; left: number }): FunnelStage => ({
  stage: name, reached, here, donors, goneOn: 0, died: {}, unaccounted: 0, notRooted: 0, thrownOut: 0, givenOut: 0, restuck: 0, mixedAway: 0, notFound: 0,
});

describe('funnelRows', () => {
  test('draws each donor tree, and marks those that still have a plant', () => {
    const [row] = funnelRows([stage('cutting', 400, 0, { reached: 12, here: 0, left: 9 })]);

    expect(row?.dots).toHaveLength(12);
    expect(row?.dots.filter(({ isLeft }) => isLeft)).toHaveLength(9);
    expect(row?.donorBar).toBeUndefined();
  });

  test('bars are as long as plants are many', () => {
    const [first, second] = funnelRows([stage('cutting', 400, 40, { reached: 1, here: 1, left: 1 }), stage('liner', 100, 100, { reached: 1, here: 1, left: 1 })]);

    expect(first?.bar.reached).toBeCloseTo(4 * (second?.bar.reached ?? 0), 10);
    expect(first?.bar.here).toBeCloseTo((first?.bar.reached ?? 0) / 10, 10);
    expect(second?.bar.here).toBe(second?.bar.reached);
  });

  test('donor trees too many to count are a bar, at every stage', () => {
    const rows = funnelRows([stage('cutting', 900, 0, { reached: 200, here: 0, left: 50 }), stage('liner', 90, 0, { reached: 20, here: 0, left: 5 })]);

    expect(rows.every(({ dots, donorBar }) => dots.length === 0 && donorBar !== undefined)).toBe(true);
    expect(rows[0]?.donorBar?.left).toBeCloseTo((rows[0]?.donorBar?.reached ?? 0) / 4, 10);
  });

  test('nothing at all is no bar, and breaks nothing', () => {
    const [row] = funnelRows([stage('cutting', 0, 0, { reached: 0, here: 0, left: 0 })]);

    expect(row?.bar).toMatchObject({ reached: 0, here: 0 });
    expect(row?.dots).toEqual([]);
  });
});
