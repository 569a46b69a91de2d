import { describe, expect, test } from 'vitest';
import { type ArmRow, compareArms } from './compare-arms.ts';
import { commonDifference } from './common-difference.ts';
import { donorDifference } from './donor-difference.ts';
import { mantelHaenszel } from './mantel-haenszel.ts';

const row = (donor: string, rooted: number, lost: number, more: Partial<ArmRow> = {}): ArmRow => ({ rooted, lost, undecided: 0, donor, tray: `${donor} tray`, bench: '1', day: '2026-10-03', team: 'Saturday', ...more });
const TREES = ['CR-1', 'CR-2', 'CR-3', 'CR-4', 'CR-5', 'CR-6'];

describe('arms are compared', () => {
  test('within trees, where most cuttings are of trees in both', () => {
    const [first, second] = [TREES.map((donor, at) => row(donor, 4 + at, 6 - at)), TREES.map((donor, at) => row(donor, 2 + at, 8 - at))];
    const strata = TREES.map((_, at) => ({ first: { yes: 4 + at, no: 6 - at }, second: { yes: 2 + at, no: 8 - at } }));
    const { chance, oddsRatio: ratio, lower, upper } = mantelHaenszel(strata);
    // Two more of ten on every tree.
    expect(compareArms(first, second)).toMatchObject({ state: 'compared', by: 'within-trees', chance, odds: { ratio, lower, upper }, donors: 6, difference: { difference: expect.closeTo(0.2, 12), lower: commonDifference(strata).lower } });
  });

  test('on one tree, exactly', () => {
    // Fisher's tea: 3 of 4 against 1 of 4, chance 17/35.
    expect(compareArms([row('CR-1', 3, 1)], [row('CR-1', 1, 3)])).toMatchObject({ state: 'compared', by: 'one-tree', chance: expect.closeTo(17 / 35, 12), donors: 1, limitsBy: 'plants', difference: { difference: 0.5 } });
  });

  test('between trees, where none is in both', () => {
    const [first, second] = [[2, 4, 6, 8, 9], [0, 2, 4, 6, 8]].map((rooted, arm) => rooted.map((n, at) => row(`${arm} ${at}`, n, 10 - n, { tray: `T${at}` })));
    const found = compareArms(first!, second!);
    expect(found).toMatchObject({ state: 'compared', by: 'between-trees', limitsBy: 'donors', donors: 10, difference: donorDifference([2, 4, 6, 8, 9].map(of10), [0, 2, 4, 6, 8].map(of10)) });
    // Odds of all plants together: (29/21) / (20/30).
    expect(found).toMatchObject({ odds: { ratio: expect.closeTo((29 * 30) / (21 * 20), 8) } });
  });

  test('allowing for something else, which then is no part of the difference', () => {
    // Half root in one season and a fifth in the other, under either arm; the first arm was stuck more in the good one.
    const [good, bad] = [{ also: 'good' }, { also: 'bad' }];
    // Trees differ a little, else nobody could say how sure that is.
    const first = [row('CR-1', 22, 18, good), row('CR-2', 18, 22, good), row('CR-3', 2, 8, bad)];
    const second = [row('CR-1', 5, 5, good), row('CR-2', 10, 30, bad), row('CR-3', 6, 34, bad)];
    expect(compareArms(first, second)).toMatchObject({ state: 'compared', by: 'allowing-for', odds: { ratio: expect.closeTo(1, 8) }, difference: { difference: expect.closeTo(0, 8) } });
  });

  test('of all lost on one side and all rooted on the other the odds have no end, and are left out between trees', () => {
    const found = compareArms(TREES.map((donor) => row(`a ${donor}`, 5, 0)), TREES.map((donor) => row(`b ${donor}`, 0, 5)));
    expect(found).toMatchObject({ state: 'compared', by: 'between-trees', limitsBy: 'plants', difference: { difference: 1 } });
    expect(found).not.toHaveProperty('odds');
  });
});

describe('arms are not compared', () => {
  const all = (rooted: number, lost: number, more: Partial<ArmRow> = {}) => TREES.map((donor) => row(donor, rooted, lost, more));

  test('while half or more of one still wait, yet what they are mixed up with is said on the first day', () => {
    expect(compareArms(all(0, 0, { undecided: 9, bench: '1' }), all(0, 0, { undecided: 9, bench: '2' }))).toMatchObject({ state: 'too-early', verdict: { mixedUpWith: ['bench'] } });
    expect(compareArms(all(2, 2, { undecided: 5 }), all(2, 2))).toMatchObject({ state: 'too-early' });
    expect(compareArms(all(2, 2, { undecided: 4 }), all(1, 3))).toMatchObject({ state: 'compared' });
  });

  test('where they are mixed up with the tree', () => {
    expect(compareArms([row('CR-1', 9, 1)], [row('SG-1', 1, 9)])).toMatchObject({ state: 'mixed-up', verdict: { mixedUpWith: ['donor', 'tray'] } });
  });

  test('where of many nobody knows the tree', () => {
    const { donor: _, ...unknown } = row('', 5, 5);
    expect(compareArms([...all(5, 5), unknown, unknown], all(5, 5))).toMatchObject({ state: 'mixed-up', verdict: { unknown: ['donor'] } });
    expect(compareArms([...all(5, 5), unknown], all(4, 6))).toMatchObject({ state: 'compared' });
  });

  test.each([[5, 0], [0, 5]])('where all did the same: %d rooted, %d lost of each tree', (rooted, lost) => expect(compareArms(all(rooted, lost), all(rooted, lost))).toMatchObject({ state: 'all-alike' }));

  test('to another recipe or species, however many there are of each', () => {
    const of = (recipe: number, species: string) => TREES.map((donor) => row(donor, 5, 5, { recipe: `${recipe}`, species }));
    expect(compareArms(of(1, 'juniper'), of(2, 'yew'), ['donor', 'recipe', 'species'])).toMatchObject({ state: 'mixed-up', verdict: { mixedUpWith: ['recipe', 'species'], advice: ['one-recipe-for-both', 'one-species'] } });
  });
});

const of10 = (successes: number) => ({ successes, plants: 10 });
