import { describe, expect, test } from 'vitest';
import { type ArmRow, compareArms } from './compare-arms.ts';
import { logisticRegression } from './logistic-regression.ts';

const row = (donor: string | undefined, rooted: number, lost: number, more: Partial<ArmRow> = {}): ArmRow =>
  ({ rooted, lost, undecided: 0, ...(donor !== undefined && { donor }), ...more });
const TREES = ['CR-1', 'CR-2', 'CR-3', 'CR-4', 'CR-5', 'CR-6'];
const DONOR = ['donor'] as const;
const compare = (first: readonly ArmRow[], second: readonly ArmRow[], confidence?: number) => compareArms(first, second, DONOR, confidence);

describe('within trees', () => {
  const first = TREES.map((donor, at) => row(donor, 4 + at, 6 - at));
  const second = TREES.map((donor, at) => row(donor, 2 + at, 8 - at));

  test('a tree in one arm alone, or cuttings of nobody knows which, tell nothing; a tree in two rows is one tree', () => {
    const plain = compare(first, second);
    const same = (one: readonly ArmRow[], other: readonly ArmRow[]) => {
      const { verdict: _, ...figures } = compare(one, other) as typeof plain & { state: 'compared' };
      const { verdict: __, ...wanted } = plain;
      expect(figures).toEqual(wanted);
    };
    same([...first, row('LW-9', 9, 1)], second);
    same([...first, row(undefined, 3, 0)], [...second, row(undefined, 0, 3)]);
    same(first.flatMap(({ donor, rooted, lost }) => [row(donor, rooted, 0), row(donor, 0, lost)]), second);
  });

  test('trees that differ make the limits, where those of plants are narrower', () => {
    expect(compare(first, second)).toMatchObject({ by: 'within-trees', limitsBy: 'plants' });
    const unlike = TREES.map((donor, at) => row(donor, at % 2 === 0 ? 10 : 1, at % 2 === 0 ? 0 : 9));
    expect(compare(unlike, TREES.map((donor) => row(donor, 4, 6)))).toMatchObject({ by: 'within-trees', limitsBy: 'donors' });
  });

  test('where only one tree tells, it is asked exactly', () => {
    // Fisher's tea on CR-1; on CR-2 all rooted under both.
    expect(compare([row('CR-1', 3, 1), row('CR-2', 2, 0)], [row('CR-1', 1, 3), row('CR-2', 2, 0)])).toMatchObject({ by: 'one-tree', chance: expect.closeTo(17 / 35, 12), donors: 1, difference: { difference: 0.5 } });
  });

  test('no tree tells where each did the same under both, though trees differ', () => {
    expect(compare([row('CR-1', 5, 0), row('CR-2', 0, 5)], [row('CR-1', 5, 0), row('CR-2', 0, 5)])).toEqual({ state: 'all-alike', verdict: expect.objectContaining({ compare: 'within-donors' }) });
  });

  test('odds without an end are told without limits', () => {
    const found = compare(TREES.map((donor) => row(donor, 5, 0)), TREES.map((donor) => row(donor, 3, 2)));
    expect(found).toMatchObject({ state: 'compared', donors: 6, difference: { difference: expect.closeTo(0.4, 12) } });
    expect((found as { odds: unknown }).odds).toEqual({ ratio: Number.POSITIVE_INFINITY });
  });
});

describe('between trees', () => {
  const arm = (name: string, rooted: readonly number[], trayOf?: (at: number) => string) => rooted.map((n, at) => row(`${name} ${at}`, n, 10 - n, trayOf && { tray: `${name} ${trayOf(at)}` }));
  const [GOOD, POOR] = [[2, 4, 6, 8, 9, 7], [0, 2, 4, 6, 8, 1]] as const;
  const by = (first: readonly ArmRow[], second: readonly ArmRow[], what: 'donor' | 'tray') => {
    const { lower, upper, chance } = logisticRegression([first, second].flatMap((rows, at) => rows.map((one) => ({ terms: [1 - at], successes: one.rooted, plants: 10, cluster: one[what]! })))).terms[1]!;
    return { odds: expect.objectContaining({ lower, upper }), chance };
  };

  test('limits of the odds are those of trees or of trays, whichever is less sure', () => {
    // Trays of two trees that fared alike, in one arm; of a good and a poor one, in the other.
    const alike = [arm('a', [2, 3, 5, 6, 8, 9], (at) => `${at >> 1}`), arm('b', [0, 1, 3, 4, 7, 8], (at) => `${at >> 1}`)] as const;
    expect(compare(...alike)).toMatchObject({ by: 'between-trees', ...by(...alike, 'tray') });
    const mixed = [arm('a', [2, 9, 3, 8, 5, 6], (at) => `${at >> 1}`), arm('b', [0, 8, 1, 7, 3, 4], (at) => `${at >> 1}`)] as const;
    expect(compare(...mixed)).toMatchObject({ by: 'between-trees', ...by(...mixed, 'donor') });
    // Of one cutting nobody knows the tray.
    const untold = [[...alike[0].slice(0, 5), row('a 5', 9, 1)], alike[1]] as const;
    expect(compare(...untold)).toMatchObject({ by: 'between-trees', ...by(...untold, 'donor') });
  });

  test('a tree of which nothing is known yet changes nothing', () => {
    const plain = compare(arm('a', GOOD), arm('b', POOR));
    expect(plain).toMatchObject({ by: 'between-trees', donors: 12, limitsBy: 'donors' });
    const { verdict: _, ...figures } = compare([...arm('a', GOOD), row('a 9', 0, 0, { undecided: 4 })], arm('b', POOR)) as typeof plain & { state: 'compared' };
    const { verdict: __, ...wanted } = plain;
    expect(figures).toEqual(wanted);
  });

  test('all of all trees did the same', () => expect(compare(arm('a', [10, 10, 10, 10, 10]), arm('b', [10, 10, 10, 10, 10]))).toMatchObject({ state: 'all-alike' }));

  test('what is no count and no level is refused, not left out', () => {
    const half = arm('a', GOOD).map((one, at) => (at === 0 ? { ...one, rooted: 2.5 } : one));
    expect(() => compare(half, arm('b', POOR))).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
    expect(() => compare(arm('a', GOOD), arm('b', POOR), 1.5)).toThrow(expect.objectContaining({ code: 'survival/not-a-level' }));
  });
});

describe('allowing for something else', () => {
  const lot = (donor: string, rooted: number, lost: number, also?: string) => row(donor, rooted, lost, also === undefined ? {} : { also });

  test('worked by hand: odds of three move a quarter to a half', () => {
    const first = [lot('CR-1', 12, 8, 'good'), lot('CR-2', 8, 12, 'good')];
    const second = [lot('CR-1', 6, 14, 'good'), lot('CR-3', 4, 16, 'good')];
    expect(compare(first, second)).toMatchObject({ by: 'allowing-for', limitsBy: 'donors', donors: 3, odds: { ratio: expect.closeTo(3, 8) }, difference: { difference: expect.closeTo(1 / 4, 8) } });
  });

  test('worked by hand: the same odds of three in both seasons, though the first arm had the worse one', () => {
    // Good season 15 of 20 against 30 of 60, bad season 30 of 60 against 5 of 20: odds 3 against 1, and 1 against 1/3.
    const first = [lot('CR-1', 8, 2, 'good'), lot('CR-2', 7, 3, 'good'), lot('CR-3', 16, 14, 'bad'), lot('CR-4', 14, 16, 'bad')];
    const second = [lot('CR-4', 16, 14, 'good'), lot('CR-3', 14, 16, 'good'), lot('CR-1', 3, 7, 'bad'), lot('CR-2', 2, 8, 'bad')];
    const found = compare(first, second);
    expect(found).toMatchObject({ by: 'allowing-for', odds: { ratio: expect.closeTo(3, 8) } });
    // 35 of 80 in the second arm: odds 35/45, three times that 105 of 150.
    expect(found).toMatchObject({ difference: { difference: expect.closeTo(105 / 150 - 35 / 80, 8) } });
  });

  test('a season that nobody told is a season of its own', () => {
    const first = [lot('CR-1', 12, 8, 'good'), lot('CR-2', 8, 12, 'good'), lot('CR-3', 11, 9), lot('CR-4', 7, 13)];
    const second = [lot('CR-3', 6, 14, 'good'), lot('CR-4', 4, 16, 'good'), lot('CR-1', 7, 13), lot('CR-2', 3, 17)];
    expect(compare(first, second)).toMatchObject({ state: 'compared', by: 'allowing-for' });
  });

  test('what goes with the arm alone cannot be told from it', () => {
    const found = compare(TREES.map((donor, at) => lot(donor, 4 + at, 6 - at, 'good')), TREES.map((donor, at) => lot(donor, 2 + at, 8 - at, 'bad')));
    expect(found).toEqual({ state: 'not-told-apart', verdict: expect.anything() });
  });
});

test('an arm of which nothing is known is too early', () => {
  const second = TREES.map((donor) => row(donor, 5, 5));
  expect(compare([], second)).toMatchObject({ state: 'too-early' });
  expect(compare(second, [])).toMatchObject({ state: 'too-early' });
});
