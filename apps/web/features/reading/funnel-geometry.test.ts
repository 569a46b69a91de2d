import type { FunnelStage } from '@sprigline/contract';
import { describe, expect, test } from 'vitest';
import { columnsOf } from './funnel-columns.ts';
import { drawFunnel } from './funnel-geometry.ts';

type Donors = FunnelStage['donors'];

const stage = (name: FunnelStage['stage'], reached: number, rest: Partial<FunnelStage> & { donors: Donors }): FunnelStage => ({
  stage: name, reached, here: 0, goneOn: 0, died: {}, unaccounted: 0, notRooted: 0, thrownOut: 0, givenOut: 0, restuck: 0, mixedAway: 0, notFound: 0, ...rest,
});
const all = (n: number): Donors => ({ reached: n, here: n, left: n });

describe('drawFunnel', () => {
  test('draws each donor tree, and marks those that still have a plant', () => {
    const { rows: [row] } = drawFunnel([stage('cutting', 400, { donors: { reached: 12, here: 0, left: 9 } })]);

    expect(row?.dots).toHaveLength(12);
    expect(row?.dots.filter(({ isLeft }) => isLeft)).toHaveLength(9);
    expect(row?.donorBar).toBeUndefined();
  });

  test('donor trees too many to count are a bar, at every stage', () => {
    const { rows } = drawFunnel([stage('cutting', 900, { donors: { reached: 200, here: 0, left: 50 } }), stage('liner', 90, { donors: all(20) })]);

    expect(rows.every(({ dots, donorBar }) => dots.length === 0 && donorBar !== undefined)).toBe(true);
    expect(rows[0]?.donorBar?.left).toBeCloseTo((rows[0]?.donorBar?.reached ?? 0) / 4, 10);
  });

  test('a stream runs from what went on to the next stage, where both are as wide', () => {
    const { rows, streams } = drawFunnel([stage('cutting', 400, { goneOn: 100, donors: all(3) }), stage('liner', 100, { here: 100, donors: all(2) })]);

    expect(streams).toHaveLength(1);
    expect(rows[1]?.bar.here).toBeCloseTo(rows[0]?.bar.goneOn ?? 0, 10);
  });

  test('nothing at all is no bar, and breaks nothing', () => {
    const { rows: [row], streams } = drawFunnel([stage('cutting', 0, { donors: all(0) })]);

    expect(row?.bar).toEqual({ goneOn: 0, here: 0, away: 0 });
    expect(row?.dots).toEqual([]);
    expect(streams).toEqual([]);
  });

  test('the table twin has the numbers that are drawn', () => {
    const stages = [
      stage('cutting', 400, { goneOn: 150, here: 40, died: { mould: 70, 'dried out': 20 }, unaccounted: 60, notRooted: 45, thrownOut: 5, restuck: 10, donors: { reached: 12, here: 4, left: 9 } }),
      stage('liner', 150, { here: 120, givenOut: 20, mixedAway: 10, donors: { reached: 8, here: 7, left: 7 } }),
    ];
    const { rows } = drawFunnel(stages);
    const columns = columnsOf(stages);
    const told = (key: string, at: number): number => columns.find((column) => column.key === key)?.of(stages[at]!) ?? 0;
    const aPlant = rows[0]!.bar.goneOn / 150;

    rows.forEach(({ bar, dots }, at) => {
      const away = ['died', 'unaccounted', 'notRooted', 'thrownOut', 'givenOut', 'restuck', 'mixedAway'].reduce((sum, key) => sum + told(key, at), 0);
      expect(bar.goneOn / aPlant).toBeCloseTo(told('goneOn', at), 8);
      expect(bar.here / aPlant).toBeCloseTo(told('here', at), 8);
      expect(bar.away / aPlant).toBeCloseTo(away, 8);
      expect(dots).toHaveLength(told('donorsReached', at));
      expect(dots.filter(({ isLeft }) => isLeft)).toHaveLength(told('donorsLeft', at));
    });
  });
});
