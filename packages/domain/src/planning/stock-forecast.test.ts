import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stageStays, type StageBatch } from '../time/stage-stays.ts';
import { stockForecast } from './stock-forecast.ts';
import type { DatedStay } from './stock-spread.ts';

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
    // Two days of the week in which they are potted are two sevenths of them.
    expect(ahead('liner', 25, [98, 100, 105])).toEqual([0, 2.857, 10]);
    expect(ahead('potted', 50, [0, 30])).toEqual([12, 12]);
  });

  test('limits worked by hand: 12 plants with a chance of a half vary by 3, and what a hundred told of that chance by 36/100 more', () => {
    const [told] = stockForecast([stay('cutting', 0, 70, 12)], PAST, NO_PRIOR, 70, [210]);
    expect(told).toMatchObject({ lower: expect.closeTo(6 - 1.2815515655 * Math.sqrt(3.36), 3), upper: expect.closeTo(6 + 1.2815515655 * Math.sqrt(3.36), 3) });
  });

  test('limits worked by hand: plants that fare alike vary more, and fifty alike cuttings of a tree tell no more than 50 / (1 + 49/5) would', () => {
    // A tree's 12 with a chance of 1/2: 4/5 of 3 and 1/5 of 36. Two trees of fifty are worth 100/10.8: 36 x 10.8/100 more. Cuttings undecided tell nothing.
    const past = ['A', 'B'].flatMap((unit) => [stay('cutting', 0, 140, 25, 'potted', { unit }), stay('cutting', 0, 140, 25, 'lost', { unit }), stay('cutting', 0, 70, 500, undefined, { unit })]);
    for (const lots of [[12], [5, 7]]) {
      const [told] = stockForecast(lots.map((plants) => stay('cutting', 0, 70, plants, undefined, { unit: 'C' })), past, { ...NO_PRIOR, likeness: 0.2 }, 70, [210]);
      expect(told).toMatchObject({ expected: expect.closeTo(6, 4), lower: expect.closeTo(6 - 1.2815515655 * Math.sqrt(2.4 + 7.2 + 3.888), 3), upper: expect.closeTo(6 + 1.2815515655 * Math.sqrt(2.4 + 7.2 + 3.888), 3) });
    }
  });

  test('limits worked by hand: how alike plants fare is told by five trees themselves', () => {
    // 8, 8, 2, 2, 5 of ten: likeness 2.6/9. Ten of a tree are worth 10 / 3.6.
    const past = [8, 8, 2, 2, 5].flatMap((rooted, tree) => [stay('cutting', 0, 140, rooted, 'potted', { unit: `${tree}` }), stay('cutting', 0, 140, 10 - rooted, 'lost', { unit: `${tree}` })]);
    const [told] = stockForecast([stay('cutting', 0, 70, 12)], past, NO_PRIOR, 70, [210]);
    const variance = (1 - 2.6 / 9) * 3 + (2.6 / 9) * 36 + 36 / (50 / 3.6);
    expect(told?.lower).toBeCloseTo(6 - 1.2815515655 * Math.sqrt(variance), 3);
    expect(told?.upper).toBeCloseTo(6 + 1.2815515655 * Math.sqrt(variance), 3);
  });

  test('worked by hand: what came under watch later counts from then on', () => {
    // In week 15 five of ten are lost; ninety more are received in week 20; in week 30 all go into pots. So half of those in week 10 do.
    const past = [stay('cutting', 0, 105, 5, 'lost'), stay('cutting', 0, 210, 5, 'potted'), stay('cutting', 140, 210, 90, 'potted')];
    expect(stockForecast([stay('cutting', 0, 70, 12)], past, NO_PRIOR, 70, [210])).toMatchObject([{ expected: expect.closeTo(6, 4) }]);
  });

  test('what is stuck and lost within a week was there for that week', () => {
    const past = [stay('cutting', 0, 3, 50, 'lost'), stay('cutting', 0, 140, 50, 'potted')];
    expect(stockForecast([stay('cutting', 0, 0, 12)], past, NO_PRIOR, 0, [150])).toMatchObject([{ expected: expect.closeTo(6, 4) }]);
  });

  test('of an age that nobody has watched, what is in a pot stays there and nothing else is promised', () => {
    const old = (state: DatedStay['state']) => stockForecast([stay(state, 0, 3_000, 30)], PAST, { mean: 0.4, likeness: 0.2, plants: 20 }, 3_000, [0, 90]).map(({ expected }) => expected);
    expect([old('cutting'), old('liner'), old('potted')]).toEqual([[0, 0], [0, 0], [30, 30]]);
  });

  test('limits worked by hand: when nobody has told, the days of the prior are one rule, that may be wrong for all at once', () => {
    // By day 455, in week 65, 7 of the 12 parts stand in pots, nine in ten of each. Of 100 each term by itself, as one sticking or tree, and for the prior.
    const [told] = stockForecast([stay('cutting', 0, 0, 100)], [], { mean: 1, likeness: 0.2, plants: 20 }, 0, [455]);
    const [share, end] = [(told?.expected ?? 0) / 90, 0.9];
    const [when, whether, both] = [end ** 2 * share * (1 - share), share ** 2 * end * (1 - end), end * (1 - end) * share * (1 - share)];
    const variance = 70 * when + 0.3 * 100 ** 2 * when + 100 ** 2 * when + 80 * whether + 0.2 * 100 ** 2 * whether + (100 ** 2 * whether) / 20 + 94 * both + 0.06 * 100 ** 2 * both;
    expect(share).toBeCloseTo(7 / 12, 6);
    expect(told).toMatchObject({ lower: expect.closeTo(Math.max(0, 52.5 - 1.2815515655 * Math.sqrt(variance)), 4), upper: expect.closeTo(Math.min(100, 52.5 + 1.2815515655 * Math.sqrt(variance)), 4) });
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

  test('the prior’s way, worked by hand: lifted in twelve parts from day 180 to 365, potted 180 days later, nine in ten', () => {
    const ahead = (mean: number, days: readonly number[]) => stockForecast([stay('cutting', 0, 0, 100)], [], { mean, likeness: 0.17, plants: 20 }, 0, days).map(({ expected }) => expected);
    // The first part on day 360, in week 51; the eleventh on day 528, in week 75; the last on day 545, in week 77.
    expect(ahead(1, [350, 357, 532, 539])).toEqual([0, expect.closeTo(90 / 12, 6), expect.closeTo((90 * 11) / 12, 6), expect.closeTo(90, 6)]);
    expect(ahead(0, [900])).toEqual([0]);
  });

  test('worked by hand: the prior’s eighteen in pots outweigh half of what is lost of eighteen own', () => {
    const past = [stay('potted', 560, 630, 9, 'lost'), stay('potted', 560, 700, 9)];
    expect(stockForecast([stay('potted', 0, 595, 12)], past, { mean: 1, likeness: 0, plants: 20 }, 595, [70])).toMatchObject([{ expected: expect.closeTo(9, 9) }]);
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
