import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Effect } from '../ledger/books.ts';
import type { Stage } from '../ledger/entry.ts';
import { type StageBatch, stageStays } from './stage-stays.ts';

let entries = 0;
const move = (day: number, effect: Effect, n: number, toStage?: Stage) => ({ entryId: `e${(entries += 1)}`, day, effect, n, ...(toStage && { toStage }) });
const batch = (stage: Stage, ...movements: StageBatch['movements']): StageBatch => ({ stage, movements });
const rows = (today: number, ...batches: StageBatch[]) => stageStays(batches, today).map(({ state, from, until, to, plants }) => [plants, state, from, until, to]);

describe('how long plants were at each stage', () => {
  test('worked by hand: a tray that was stuck, lost some, and went on to pots', () => {
    expect(rows(400, batch('cutting', move(0, 'stuck', 20), move(60, 'died', 3), move(200, 'wentOn', 10, 'liner')), batch('liner', move(200, 'wentIn', 10), move(330, 'wentOn', 4, 'potted')))).toEqual([
      [3, 'cutting', 0, 60, 'lost'], [10, 'cutting', 0, 200, 'liner'], [7, 'cutting', 0, 400, undefined],
      [4, 'liner', 200, 330, 'potted'], [6, 'liner', 200, 400, undefined],
    ]);
  });

  test('who came first goes first, and a loss may take of several', () => {
    expect(rows(200, batch('liner', move(10, 'received', 3), move(50, 'found', 4), move(90, 'died', 5)))).toEqual([[3, 'liner', 10, 90, 'lost'], [2, 'liner', 50, 90, 'lost'], [2, 'liner', 50, 200, undefined]]);
  });

  test.each(['died', 'unaccounted', 'thrownOut', 'notRooted'] as const)('%s is lost', (effect) => {
    expect(rows(90, batch('cutting', move(0, 'stuck', 2), move(60, effect, 2)))).toEqual([[2, 'cutting', 0, 60, 'lost']]);
  });

  test.each(['givenOut', 'givenAcross', 'splitOut', 'mixedOut', 'identifiedOut', 'restuckOut'] as const)('%s was last seen when it left', (effect) => {
    expect(rows(90, batch('cutting', move(0, 'stuck', 2), move(60, effect, 2)))).toEqual([[2, 'cutting', 0, 60, undefined]]);
  });

  test.each(['stuck', 'restuckIn', 'received', 'wentIn', 'splitIn', 'mixedIn', 'identifiedIn', 'givenIn', 'found'] as const)('%s begins a stay', (effect) => {
    expect(rows(90, batch('cutting', move(5, effect, 2)))).toEqual([[2, 'cutting', 5, 90, undefined]]);
  });

  test('planted out of a pot is where a pot leads: no stage further on the way', () => {
    expect(rows(500, batch('potted', move(300, 'wentIn', 6), move(400, 'wentOn', 6, 'planted')))).toEqual([[6, 'potted', 300, 400, undefined]]);
    expect(rows(500, batch('cutting', move(0, 'stuck', 6), move(400, 'wentOn', 6, 'planted')), batch('planted', move(400, 'wentIn', 6)))).toEqual([[6, 'cutting', 0, 400, 'potted'], [6, 'potted', 400, 500, undefined]]);
    // Nobody says whereto: seen until then.
    expect(rows(500, batch('liner', move(0, 'received', 6), move(40, 'wentOn', 6)))).toEqual([[6, 'liner', 0, 40, undefined]]);
  });

  test('before sticking is the day of sticking, and nothing ends before it began', () => {
    expect(rows(90, batch('cutting', move(-4, 'stuck', 2), move(-1, 'died', 1)))).toEqual([[1, 'cutting', 0, 0, 'lost'], [1, 'cutting', 0, 90, undefined]]);
    expect(rows(90, batch('cutting', move(50, 'found', 2), move(40, 'died', 1)))).toEqual([[1, 'cutting', 50, 50, 'lost'], [1, 'cutting', 50, 90, undefined]]);
    expect(rows(30, batch('cutting', move(50, 'found', 2)))).toEqual([[2, 'cutting', 50, 50, undefined]]);
  });

  test('open are those still there, not those that were carried elsewhere today', () => {
    expect(stageStays([batch('cutting', move(0, 'stuck', 3), move(90, 'splitOut', 1))], 90).map(({ plants, until, isOpen }) => [plants, until, isOpen])).toEqual([[1, 90, undefined], [2, 90, true]]);
  });

  test('a miscount that was taken back never happened, and more than is there cannot leave', () => {
    const missing = move(50, 'unaccounted', 4);
    expect(rows(90, batch('cutting', move(0, 'stuck', 5), missing, { ...move(60, 'takenBack', 4), undoes: missing.entryId }))).toEqual([[5, 'cutting', 0, 90, undefined]]);
    expect(rows(90, batch('cutting', move(0, 'stuck', 5), move(60, 'died', 9), move(70, 'died', 1)))).toEqual([[5, 'cutting', 0, 60, 'lost']]);
  });
});

test('every plant that came is in one stay, and no stay is empty', () => {
  const moves = fc.array(fc.record({ day: fc.nat(300), effect: fc.constantFrom<Effect>('stuck', 'found', 'died', 'wentOn', 'givenOut'), n: fc.integer({ min: 1, max: 9 }) }), { maxLength: 12 });
  fc.assert(fc.property(moves, (lines) => {
    const stays = stageStays([batch('liner', ...lines.map(({ day, effect, n }) => move(day, effect, n, 'potted')))], 300);
    const came = lines.reduce((sum, { effect, n }) => (effect === 'stuck' || effect === 'found' ? sum + n : sum), 0);
    expect(stays.reduce((sum, { plants }) => sum + plants, 0)).toBe(came);
    for (const { from, until, plants } of stays) expect(plants > 0 && until >= from).toBe(true);
  }));
});
