import { describe, expect, test } from 'vitest';
import { pastForecasts } from './past-forecasts.ts';
import type { DatedStay } from './stock-spread.ts';

/** So light that only the own history speaks. */
const NO_PRIOR = { mean: 0.5, likeness: 0, plants: 1e-6 };
const stay = (state: DatedStay['state'], from: number, until: number, plants: number, more: Partial<DatedStay> = {}): DatedStay => ({ state, from, until, plants, stuckOn: 0, unit: 'A', ...more });

/** Of a hundred: sixty are lifted in week 20 and forty are lost; fifty of the sixty are potted in week 40, ten are lost. */
const YEAR = [
  stay('cutting', 0, 140, 60, { to: 'liner' }), stay('cutting', 0, 140, 40, { to: 'lost' }), stay('liner', 140, 280, 50, { to: 'potted' }), stay('liner', 140, 280, 10, { to: 'lost' }),
  stay('potted', 280, 2_000, 50, { isOpen: true }),
];
const LATER = YEAR.map((one) => ({ ...one, stuckOn: 1_000, until: Math.min(one.until, 1_000) }));
const made = (then: number, asked = LATER, { history = [...YEAR, ...LATER], today = 2_000, ahead = 300 } = {}) => pastForecasts(asked, history, NO_PRIOR, today, [then], ahead);

describe('held against what came', () => {
  test('only what was known then is used, and what came is counted of the plants that were here then', () => {
    // A year of history; then a hundred more stuck on day 1000 of which fifty are in pots 280 days on, and ten that were stuck later.
    const asked = [...LATER, stay('potted', 0, 900, 10, { stuckOn: 1_100, isOpen: true })];
    const told = pastForecasts(asked, [...YEAR, ...LATER], NO_PRIOR, 2_000, [1_070, 1_900], 300);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({ madeOn: 1_070, days: 300, came: 50, expected: expect.closeTo(50, 2) });
  });

  test('young plants are no plants in pots yet', () => {
    expect(made(1_070, LATER, { ahead: 150 })).toMatchObject([{ came: 0, expected: expect.closeTo(0, 2) }]);
  });

  test('the day that it is made for may be today and no later', () => {
    expect(made(1_700)).toHaveLength(1);
    expect(made(1_701)).toEqual([]);
  });

  test.each([[19, 0], [20, 1]])('%d plants make %d forecast', (plants, forecasts) => {
    expect(made(1_070, [stay('cutting', 0, 1_000, plants - 5, { stuckOn: 1_000, isOpen: true }), stay('cutting', 0, 1_000, 5, { stuckOn: 1_000, isOpen: true })])).toHaveLength(forecasts);
  });

  test('what is stuck on the day is there, what dies on it is not', () => {
    expect(made(1_000, LATER, { ahead: 500 })).toMatchObject([{ came: 50 }]);
    expect(made(999)).toEqual([]);
    const lost = stay('cutting', 0, 70, 30, { stuckOn: 1_000, to: 'lost' });
    expect(made(1_069, [lost])).toMatchObject([{ came: 0 }]);
    expect(made(1_070, [lost])).toEqual([]);
  });

  test('plants that are planted out, or carried elsewhere, on the day are counted once', () => {
    const planted = [stay('potted', 0, 370, 30, { stuckOn: 1_000 }), stay('potted', 370, 1_000, 30, { stuckOn: 1_000, isOpen: true })];
    expect(made(1_070, planted)).toMatchObject([{ came: 30, expected: 30 }]);
    expect(made(1_370, planted)).toMatchObject([{ came: 30, expected: 30 }]);
    expect(made(1_700, planted.map((one) => ({ ...one, stuckOn: 1_630, until: 370 })))).toMatchObject([{ came: 30, expected: 30 }]);
  });

  test('what was received in between came of no forecast, be it of the same tree', () => {
    const here = [stay('cutting', 0, 140, 30, { stuckOn: 1_000, to: 'liner' }), stay('potted', 280, 1_000, 10, { stuckOn: 1_000, isOpen: true })];
    const received = [stay('potted', 200, 1_000, 25, { stuckOn: 1_000, unit: 'B', isOpen: true }), stay('potted', 210, 1_000, 25, { stuckOn: 990, isOpen: true })];
    expect(made(1_070, [...here, ...received])).toMatchObject([{ came: 10 }]);
    expect(made(1_070, [...here, stay('potted', 200, 1_000, 25, { stuckOn: 1_000, isOpen: true })])).toMatchObject([{ came: 30 }]);
  });
});

describe('what was known then', () => {
  /** Forty young plants in week 30. Of sixty before them that were still young then, thirty were potted in week 35: twenty of the forty. */
  const asked = [stay('liner', 140, 1_000, 40, { stuckOn: 1_070, isOpen: true })];
  const before = [stay('liner', 140, 245, 30, { to: 'potted' }), stay('liner', 140, 400, 30)];
  const known = (...more: readonly DatedStay[]) => made(1_280, asked, { history: [...before, ...more], ahead: 70 })[0]?.expected;
  const ENDS = [{ to: 'lost' }, { to: 'potted' }, {}] as const;

  test.each([1_040, 1_041])('what began on the day or later says nothing: in week 34 of those stuck on day %d', (stuckOn) => {
    for (const end of ENDS) expect(known(stay('liner', 240, 300, 60, { stuckOn, ...end }))).toBeCloseTo(20, 4);
  });

  test('what ended later was still there, whatever became of it: thirty of 120', () => {
    for (const end of ENDS) expect(known(stay('liner', 140, 281, 60, { stuckOn: 1_000, ...end }))).toBeCloseTo(10, 4);
  });

  test('what ended on the day is known: in week 40 sixty of the ninety that were left', () => {
    const [lost, potted] = ENDS.map((end) => known(stay('liner', 140, 280, 60, { stuckOn: 1_000, ...end })));
    expect(lost).toBeCloseTo(10, 4);
    expect(potted).toBeCloseTo(30, 4);
  });
});
