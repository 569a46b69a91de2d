import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NUISANCES, type TrialRow, trialVerdict } from './trial-verdict.ts';

/** Six trees, each in both arms, in four trays on both benches, on one day by one team. */
const SOUND: TrialRow[] = ['talc', 'dip'].flatMap((arm) =>
  ['CR-01', 'CR-02', 'CR-03', 'CR-04', 'CR-05', 'CR-06'].map((donor, at) => ({ arm, plants: 10, donor, tray: `${arm} ${at % 4}`, bench: `bench ${at % 2}`, day: '2026-10-03', team: 'Saturday' })),
);
const with_ = (change: (row: TrialRow, at: number) => Partial<TrialRow>) => trialVerdict(SOUND.map((row, at) => ({ ...row, ...change(row, at) })));

describe('a comparison', () => {
  test('that is laid out well may be made, within donor trees', () => {
    expect(trialVerdict(SOUND)).toEqual({ mayCompare: true, mixedUpWith: [], unknown: [], compare: 'within-donors', advice: [] });
  });

  test.each([
    ['donor', 'each-donor-in-both', (row: TrialRow) => ({ donor: row.arm === 'talc' ? 'CR-01' : 'SG-01' })],
    ['tray', 'several-trays-each', (row: TrialRow) => ({ tray: row.arm })],
    ['bench', 'both-on-each-bench', (row: TrialRow) => ({ bench: row.arm })],
    ['day', 'both-on-each-day', (row: TrialRow) => ({ day: row.arm === 'talc' ? '2026-10-03' : '2026-11-07' })],
    ['team', 'both-by-each-team', (row: TrialRow) => ({ team: row.arm })],
  ] as const)('mixed up with %s is refused, and told how to do better', (nuisance, advice, change) => {
    expect(with_(change)).toMatchObject({ mayCompare: false, mixedUpWith: [nuisance], advice: [advice] });
  });

  test('of other trees in each arm is one between trees, if there are five each', () => {
    expect(with_(({ arm }, at) => ({ donor: `${arm} ${at}` }))).toMatchObject({ mayCompare: true, compare: 'between-donors' });
  });

  test('what nobody wrote down is said', () => {
    expect(trialVerdict(SOUND.map(({ team: _, ...row }) => row)).unknown).toEqual(['team']);
  });

  test('told of nine plants in ten is told; of fewer it may hide anything, and nothing is said of the rest', () => {
    const told = (of: number) => trialVerdict(Array.from({ length: 20 }, (_, at) => ({ arm: at % 2 === 0 ? 'talc' : 'dip', plants: 1, ...(at < of && { bench: at % 2 === 0 ? 'north' : 'south' }) })), ['bench']);
    expect(told(18)).toMatchObject({ unknown: [], mixedUpWith: ['bench'], mayCompare: false });
    expect(told(17)).toMatchObject({ unknown: ['bench'], mixedUpWith: [], mayCompare: true });
  });

  test('half of the plants on what both arms share is enough, fewer are not, and the worst is named first', () => {
    // Of ten plants so many are of a tree in both arms, the others of one tree each.
    const shared = (plants: number): TrialRow[] => ['talc', 'dip'].flatMap((arm) => [{ arm, plants, donor: 'both', bench: arm }, { arm, plants: 10 - plants, donor: arm, bench: arm }]);
    expect(trialVerdict(shared(5), ['donor'])).toMatchObject({ mayCompare: true, compare: 'within-donors' });
    expect(trialVerdict(shared(4), ['donor'])).toMatchObject({ mayCompare: false, compare: 'between-donors', mixedUpWith: ['donor'] });
    expect(trialVerdict(shared(4), ['donor', 'bench'])).toMatchObject({ mixedUpWith: ['bench', 'donor'], advice: ['both-on-each-bench', 'each-donor-in-both'] });
  });

  test('one arm of many trees does not make up for another of one', () => {
    const rows = ['1', '2', '3', '4', '5', '6'].map((donor) => ({ arm: 'talc', plants: 5, donor })).concat({ arm: 'dip', plants: 30, donor: '7' });
    expect(trialVerdict(rows, ['donor'])).toMatchObject({ mayCompare: false, mixedUpWith: ['donor'] });
  });

  test('needs two arms, and then is mixed up with nothing', () => {
    for (const rows of [SOUND.slice(0, 6), []]) expect(trialVerdict(rows)).toMatchObject({ mayCompare: false, mixedUpWith: [], advice: ['stick-both'] });
    expect(trialVerdict([])).toMatchObject({ unknown: [], compare: 'between-donors' });
  });

  test('does not depend on names or order, and empty groups say nothing', () => {
    const rows = fc.array(fc.record({ arm: fc.constantFrom('a', 'b'), plants: fc.integer({ min: 1, max: 9 }), donor: fc.constantFrom('1', '2', '3'), tray: fc.constantFrom('1', '2', '3', '4'), bench: fc.constantFrom('1', '2'), day: fc.constantFrom('1', '2'), team: fc.constantFrom('1', '2') }), { minLength: 1, maxLength: 20 });
    fc.assert(fc.property(rows, (rows) => {
      const plain = trialVerdict(rows);
      const renamed = rows.map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, name === 'plants' ? value : `${name} ${value}`])) as unknown as TrialRow);
      expect(trialVerdict(renamed.reverse())).toEqual(plain);
      expect(trialVerdict([...rows, { arm: 'c', plants: 0, ...Object.fromEntries(NUISANCES.map((nuisance) => [nuisance, 'x'])) }])).toEqual(plain);
    }));
  });
});
