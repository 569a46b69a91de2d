import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stageStays, type StageBatch } from '../time/stage-stays.ts';
import { type DatedStay, stockForecast } from './stock-forecast.ts';

/** So light that only the own history speaks. */
const NO_PRIOR = { mean: 0.5, likeness: 0, plants: 1e-6 };
const stay = (state: DatedStay['state'], from: number, until: number, plants: number, to?: DatedStay['to'], more: Partial<DatedStay> = {}): DatedStay =>
  ({ state, from, until, plants, ...(to && { to }), stuckOn: 0, unit: 'A', ...more });

/** Of a hundred: sixty are lifted in week 20 and forty are lost; fifty of the sixty are potted in week 40, ten are lost. */
const PAST = [stay('cutting', 0, 140, 60, 'liner'), stay('cutting', 0, 140, 40, 'lost'), stay('liner', 140, 280, 50, 'potted'), stay('liner', 140, 280, 10, 'lost'), stay('potted', 280, 700, 50)];

describe('plants in pots ahead', () => {
  test('worked by hand: half of the cuttings, five in six of the liners, all that are potted', () => {
    const ahead = (state: DatedStay['state'], weeks: number, days: readonly number[]) =>
      stockForecast([stay(state, 0, weeks * 7, 12)], PAST, NO_PRIOR, weeks * 7, days).map(({ expected }) => Math.round(expected * 1000) / 1000);
    expect(ahead('cutting', 10, [0, 70, 210])).toEqual([0, 0, 6]);
    expect(ahead('liner', 25, [100, 105])).toEqual([0, 10]);
    expect(ahead('potted', 50, [0, 30])).toEqual([12, 12]);
  });

  test('limits worked by hand: 12 plants with a chance of a half vary by 3, and what a hundred told of that chance by 36/100 more', () => {
    const [told] = stockForecast([stay('cutting', 0, 70, 12)], PAST, NO_PRIOR, 70, [210]);
    expect(told).toMatchObject({ lower: expect.closeTo(6 - 1.2815515655 * Math.sqrt(3.36), 3), upper: expect.closeTo(6 + 1.2815515655 * Math.sqrt(3.36), 3) });
  });

  test('the fewer trees have told, the wider', () => {
    const widthBy = (units: readonly string[]): number => {
      const past = units.flatMap((unit) => PAST.map((one) => ({ ...one, unit, plants: one.plants / units.length })));
      const [told] = stockForecast([stay('cutting', 0, 70, 12)], past, { mean: 0.5, likeness: 0.2, plants: 20 }, 70, [210]);
      return (told?.upper ?? 0) - (told?.lower ?? 0);
    };
    expect(widthBy(['A', 'B'])).toBeGreaterThan(widthBy([...'ABCDEFGHIJ']));
  });

  test('without any history the prior speaks, and none is in a pot before a year', () => {
    const told = stockForecast([stay('cutting', 0, 0, 100)], [], { mean: 0.4, likeness: 0.17, plants: 20 }, 0, [300, 900]);
    expect(told.map(({ expected }) => expected)).toEqual([0, expect.closeTo(36, 6)]);
  });

  test('never more than there is, and its limits hold it', () => {
    const lots = fc.array(fc.record({ state: fc.constantFrom('cutting', 'liner', 'potted'), plants: fc.integer({ min: 1, max: 40 }), stuckOn: fc.integer({ min: 0, max: 300 }), unit: fc.constantFrom('A', 'B') }), { maxLength: 5 });
    fc.assert(fc.property(lots, (some) => {
      const here = some.map(({ state, plants, stuckOn, unit }) => stay(state as DatedStay['state'], 0, 300 - stuckOn, plants, undefined, { stuckOn, unit }));
      const all = here.reduce((sum, { plants }) => sum + plants, 0);
      for (const { expected, lower, upper } of stockForecast(here, PAST, { mean: 0.4, likeness: 0.1, plants: 20 }, 300, [0, 90, 360])) {
        expect(lower <= expected + 1e-9 && expected <= upper + 1e-9 && upper <= all + 1e-9).toBe(true);
      }
    }));
  });
});

test('stays from the books: first come, first gone; a miscount never happened; planted is potted still; open is what is there today', () => {
  const move = (day: number, effect: StageBatch['movements'][number]['effect'], n: number, more = {}) => ({ entryId: `${day}${effect}`, day, effect, n, ...more });
  const stays = stageStays([
    { stage: 'cutting', movements: [move(0, 'stuck', 10), move(50, 'unaccounted', 2), move(90, 'takenBack', 1, { undoes: '50unaccounted' }), move(140, 'wentOn', 6, { toStage: 'liner' }), move(365, 'notRooted', 3)] },
    { stage: 'potted', movements: [move(280, 'wentIn', 5), move(300, 'splitIn', 2), move(400, 'wentOn', 6, { toStage: 'planted' })] },
  ], 500);
  expect(stays).toEqual([
    { state: 'cutting', from: 0, until: 50, plants: 1, to: 'lost' }, { state: 'cutting', from: 0, until: 140, plants: 6, to: 'liner' }, { state: 'cutting', from: 0, until: 365, plants: 3, to: 'lost' },
    { state: 'potted', from: 280, until: 400, plants: 5 }, { state: 'potted', from: 300, until: 400, plants: 1 }, { state: 'potted', from: 300, until: 500, plants: 1, isOpen: true },
  ]);
});
