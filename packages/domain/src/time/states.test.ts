import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kaplanMeier } from './kaplan-meier.ts';
import { stateOccupancy, type Stay } from './state-occupancy.ts';
import { type Between, turnbull } from './turnbull.ts';

type State = 'cutting' | 'rooted' | 'lost';
const STATES = ['cutting', 'rooted', 'lost'] as const;

describe('Aalen-Johansen', () => {
  test('worked by hand: of four one roots at 1, one dies at 2, one is last seen at 3, one roots at 4', () => {
    const stays: Stay<State>[] = [[1, 'rooted'], [2, 'lost'], [3, undefined], [4, 'rooted']].map(([until, to]) => ({ state: 'cutting', from: 0, until: until as number, ...(to ? { to: to as State } : {}), plants: 1 }));
    const curve = stateOccupancy(stays, STATES);
    expect(curve.map(({ time, shares }) => [time, ...shares])).toEqual([
      [1, expect.closeTo(3 / 4, 12), expect.closeTo(1 / 4, 12), 0],
      [2, expect.closeTo(1 / 2, 12), expect.closeTo(1 / 4, 12), expect.closeTo(1 / 4, 12)],
      [4, 0, expect.closeTo(3 / 4, 12), expect.closeTo(1 / 4, 12)],
    ]);
    // One of four, as a binomial share.
    expect(curve[0]!.standardErrors[1]).toBeCloseTo(Math.sqrt(3 / 64), 12);
    expect(curve[1]!.standardErrors[2]).toBeCloseTo(Math.sqrt((1 / 4) * (3 / 4) / 4), 12);
  });

  test('through several states', () => {
    const stays: Stay<State>[] = [
      { state: 'cutting', from: 0, until: 2, to: 'rooted', plants: 6 }, { state: 'cutting', from: 0, until: 3, to: 'lost', plants: 4 },
      { state: 'rooted', from: 2, until: 5, to: 'lost', plants: 3 }, { state: 'rooted', from: 2, until: 9, plants: 3 },
    ];
    const last = stateOccupancy(stays, STATES).at(-1)!;
    expect(last.shares).toEqual([0, expect.closeTo(0.3, 12), expect.closeTo(0.7, 12)]);
    expect(last.standardErrors[1]).toBeCloseTo(Math.sqrt(0.3 * 0.7 / 10), 12);
  });

  const lots = fc.array(fc.record({ until: fc.integer({ min: 1, max: 30 }), plants: fc.integer({ min: 1, max: 9 }), to: fc.constantFrom('rooted' as const, 'lost' as const, undefined) }), { minLength: 1, maxLength: 25 });
  test('shares add up to 1; with one end it is Kaplan-Meier, errors too', () => {
    fc.assert(fc.property(lots, (lots) => {
      const stays = lots.map(({ to, ...rest }) => ({ ...rest, state: 'cutting' as const, from: 0, ...(to ? { to } : {}) }));
      for (const { shares } of stateOccupancy<State>(stays, STATES)) expect(shares.reduce((a, b) => a + b)).toBeCloseTo(1, 10);

      const oneEnd = lots.map(({ until, plants, to }) => ({ state: 'cutting' as const, from: 0, until, plants, ...(to ? { to: 'lost' as const } : {}) }));
      const steps = kaplanMeier(lots.map(({ until, plants, to }) => ({ until, plants, happened: to !== undefined }))).steps.filter(({ events }) => events > 0);
      const curve = stateOccupancy<State>(oneEnd, STATES);
      expect(curve.map(({ shares, standardErrors }) => [shares[0]!.toFixed(8), standardErrors[0]!.toFixed(8)])).toEqual(steps.map(({ surviving, standardError }) => [surviving.toFixed(8), standardError.toFixed(8)]));
    }));
  });

  test('who only seems to move stays: a step to the same state changes no share', () => {
    const stays: Stay<State>[] = [{ state: 'cutting', from: 0, until: 2, to: 'cutting', plants: 3 }, { state: 'cutting', from: 2, until: 5, to: 'rooted', plants: 1 }, { state: 'cutting', from: 2, until: 5, plants: 2 }];
    expect(stateOccupancy(stays, STATES).map(({ time, shares }) => [time, ...shares])).toEqual([[2, 1, 0, 0], [5, expect.closeTo(2 / 3, 12), expect.closeTo(1 / 3, 12), 0]]);
  });

  test.each([[-1, 1], [1, 1], [0, Number.POSITIVE_INFINITY], [Number.NaN, 1]])('a stay from %d to %d is none', (from, until) => {
    expect(() => stateOccupancy<State>([{ state: 'cutting', from, until, to: 'rooted', plants: 1 }], STATES)).toThrow(expect.objectContaining({ code: 'survival/not-a-time' }));
  });

  test.each([[[], 'survival/no-plants'], [[{ state: 'cutting', from: 2, until: 1, plants: 1 }], 'survival/not-a-time'], [[{ state: 'potted', from: 0, until: 1, plants: 1 }], 'survival/not-a-state']])('no answer is a refusal', (stays, code) => {
    expect(() => stateOccupancy(stays as Stay<State>[], STATES)).toThrow(expect.objectContaining({ code }));
  });
});

describe('Turnbull', () => {
  const between = (after: number, by: number, plants = 1): Between => ({ after, by, plants });
  const NEVER = Number.POSITIVE_INFINITY;

  // Finkelstein DM, Wolfe RA (1985) Biometrics 41:933-945: months to breast retraction, radiotherapy alone, with the shares that Turnbull's
  // method gives in published re-analyses (Klein & Moeschberger 2003, example 5.3); from memory.
  test('the cosmesis intervals of Finkelstein & Wolfe 1985, radiotherapy alone', () => {
    const seen = [
      [45, NEVER], [6, 10], [0, 7], [46, NEVER], [46, NEVER], [7, 16], [17, NEVER], [7, 14], [37, 44], [0, 8], [4, 11], [15, NEVER], [11, 15], [22, NEVER], [46, NEVER],
      [46, NEVER], [25, 37], [46, NEVER], [26, 40], [46, NEVER], [27, 34], [36, 44], [46, NEVER], [36, 48], [37, NEVER], [40, NEVER], [17, 25], [46, NEVER], [11, 18], [38, NEVER],
      [5, 12], [37, NEVER], [0, 5], [18, NEVER], [24, NEVER], [36, NEVER], [5, 11], [19, 35], [17, 25], [24, NEVER], [32, NEVER], [33, NEVER], [19, 26], [37, NEVER], [34, NEVER], [36, NEVER],
    ].map(([after, by]) => between(after!, by!));
    const { regions, isConverged } = turnbull(seen);
    expect(isConverged).toBe(true);
    const printed = [[4, 5, 0.0463], [6, 7, 0.0334], [7, 8, 0.0887], [11, 12, 0.0708], [24, 25, 0.0926], [33, 34, 0.0818], [38, 40, 0.1209], [46, 48, 0.4656]];
    expect(regions.map(({ after, by }) => [after, by])).toEqual(printed.map(([after, by]) => [after, by]));
    regions.forEach(({ share }, at) => expect(Math.abs(share - printed[at]![2]!)).toBeLessThanOrEqual(0.0005));
  });

  test('worked by hand: two intervals that share a region put everything there', () => {
    expect(turnbull([between(0, 5), between(3, 8)]).regions).toEqual([{ after: 3, by: 5, share: expect.closeTo(1, 8) }]);
    // One in (0,1], one in (2,3], one in either: 1/2 each by symmetry.
    expect(turnbull([between(0, 1), between(2, 3), between(0, 3)]).regions.map(({ share }) => share)).toEqual([expect.closeTo(0.5, 8), expect.closeTo(0.5, 8)]);
  });

  test('what ends where another begins has nothing in common with it', () => {
    expect(turnbull([between(1, 2), between(2, 3, 3)]).regions.map(({ share }) => share)).toEqual([expect.closeTo(0.25, 8), expect.closeTo(0.75, 8)]);
  });

  const looks = fc.array(fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 12 }), fc.boolean(), fc.integer({ min: 1, max: 4 })).map(([after, more, isOpen, plants]) => between(after, isOpen ? NEVER : after + more, plants)), { minLength: 1, maxLength: 20 });
  test('shares add up, weights are copies, another scale of time changes nothing', () => {
    fc.assert(fc.property(looks, (seen) => {
      const { regions, gap } = turnbull(seen);
      expect(regions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
      expect(gap).toBeLessThan(1e-6);
      const copies = turnbull(seen.flatMap(({ plants, ...rest }) => Array.from({ length: plants }, () => ({ ...rest, plants: 1 }))).reverse());
      expect(copies.gap).toBeLessThan(1e-6);
      const scaled = turnbull(seen.map(({ after, by, plants }) => between(after * 3, by * 3, plants)));
      expect(scaled.regions.map(({ share }) => share.toFixed(6))).toEqual(regions.map(({ share }) => share.toFixed(6)));
    }), { numRuns: 50 });
  });

  test('exactly known times make it Kaplan-Meier', () => {
    const days = [3, 5, 5, 9];
    const { regions } = turnbull([...days.map((day) => between(day - 0.5, day)), between(5, NEVER)]);
    const curve = kaplanMeier([...days.map((until) => ({ until, plants: 1, happened: true })), { until: 5, plants: 1, happened: false }]).steps;
    let left = 1;
    for (const { by, share } of regions.filter(({ by }) => by < NEVER)) {
      left -= share;
      expect(left).toBeCloseTo(curve.find(({ time }) => time === by)!.surviving, 6);
    }
  });

  test.each([[[]], [[between(2, 2)]], [[between(-1, 2)]], [[between(1, 2, 0)]]])('no answer is a refusal', (seen) => expect(() => turnbull(seen)).toThrow(expect.objectContaining({ code: expect.stringMatching(/^survival\//) })));
});
