import { type Effect, replay, STAGES } from '@sprigline/domain';
import { describe, expect, test } from 'vitest';
import { naiveAccount, realAccount } from './account.ts';
import { naiveReplay } from './replay.ts';
import { readSheet } from './sheet.ts';
import { type Account, concerning, overall, stageTotals } from './sheet-totals.ts';

const { batches, entries } = readSheet();
const accounts = new Map<string, Account>(
  batches.map((batch) => {
    const bench = naiveReplay(batch, concerning(batch.id, entries));
    return [batch.id, { balance: bench.here, movements: bench.moved, flags: bench.flags }];
  }),
);

describe('the log sheet of two seasons, plant by plant', () => {
  test('closes over all stands', () => {
    expect(overall([...accounts.values()])).toEqual({
      batches: 212,
      stuck: 1692,
      found: 4,
      here: 607,
      died: 219,
      unaccounted: 682,
      notRooted: 137,
      thrownOut: 0,
      givenOut: 51,
      takenBack: 23,
      'called-by-count': 12,
      'rooted-fell': 11,
      'found-by-count': 1,
      'took-more': 3,
    });
  });

  test('closes at every stage of Corran Ridge', () => {
    const ridge = batches.filter(({ stand }) => stand === 'Corran Ridge');
    expect(STAGES.map((stage) => Object.values(stageTotals(stage, ridge, accounts)))).toEqual([
      // came in, gone on, died, unaccounted, not rooted, thrown out, given out, here, donors in, donors here
      [464, 203, 58, 157, 45, 0, 0, 1, 12, 1],
      [205, 155, 0, 12, 0, 0, 17, 21, 12, 11],
      [155, 105, 0, 4, 0, 0, 0, 46, 12, 9],
      [105, 0, 0, 5, 0, 0, 0, 100, 9, 9],
    ]);
  });

  test('leaves no plant of any batch without an end or a place', () => {
    const arrivals = new Set<Effect>(['stuck', 'wentIn', 'found', 'takenBack']);
    for (const { balance, movements } of accounts.values()) {
      expect(movements.reduce((sum, { effect, n }) => sum + (arrivals.has(effect) ? n : -n), 0)).toBe(balance);
    }
  });

  test('closes alike in the replay of the domain', () => {
    for (const batch of batches) {
      const said = concerning(batch.id, entries);
      expect(realAccount(batch, replay(batch, said))).toEqual(naiveAccount(batch, said));
    }
  });
});
