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

  test('needs two arms', () => expect(trialVerdict(SOUND.slice(0, 6))).toMatchObject({ mayCompare: false, advice: ['stick-both'] }));

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
