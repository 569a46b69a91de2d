import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Effect } from '../ledger/books.ts';
import type { CuttingBatch, CuttingMovement, RootsToldOn } from './cutting-history.ts';
import { followedCuttings, withoutTakenBack } from './followed-cuttings.ts';

let entries = 0;
const move = (day: number, effect: Effect, n: number, more: Partial<CuttingMovement> = {}): CuttingMovement => ({ entryId: `e${(entries += 1)}`, day, effect, n, ...more });
const tug = (day: number, rooted: number, look: RootsToldOn['look'] = 'tug'): RootsToldOn => ({ entryId: `e${(entries += 1)}`, day, rooted, look });
const tray = (movements: readonly CuttingMovement[], told: readonly RootsToldOn[] = [], lastSeen?: number): CuttingBatch => ({ movements, told, lastSeen });
const rows = (...batches: CuttingBatch[]) =>
  followedCuttings(batches).map(({ from, unrootedAt, aliveAt, by, end, plants }) => [plants, end, from, unrootedAt, aliveAt, by]).sort();

describe('what is known of one tray', () => {
  test('worked by hand: two tugs, a lift and the verdict', () => {
    const books = [move(0, 'stuck', 20), move(60, 'died', 3, { lastSeen: 10 }), move(200, 'wentOn', 10), move(365, 'notRooted', 2)];
    // On day 100 five of seventeen, on day 150 eight; of the ten that went on, two had roots after day 150; five are still there, three were never seen again.
    expect(rows(tray(books, [tug(100, 5), tug(150, 8)], 150))).toEqual([
      [2, 'called', 0, 365, 365, 365], [2, 'rooted', 0, 150, 150, 200], [3, 'lost', 0, 0, 10, 60], [3, 'rooted', 0, 100, 100, 150],
      [5, 'rooted', 0, 0, 0, 100], [5, 'waiting', 0, 150, 150, 150],
    ]);
  });

  test('a look from above finds roots, and tells nothing of the others', () => {
    expect(rows(tray([move(0, 'stuck', 10)], [tug(90, 0), tug(120, 2, 'look'), tug(200, 6, 'lifted')], 200))).toEqual([
      [2, 'rooted', 0, 90, 90, 120], [4, 'rooted', 0, 90, 90, 200], [4, 'waiting', 0, 200, 200, 200],
    ]);
  });

  test('nobody looked: they wait, and were last seen alive', () => {
    expect(rows(tray([move(0, 'stuck', 10)], [], 40))).toEqual([[10, 'waiting', 0, 0, 40, 40]]);
    expect(rows(tray([move(0, 'stuck', 10)]))).toEqual([[10, 'waiting', 0, 0, 0, 0]]);
  });

  test('a told number of roots that falls takes none back', () => {
    expect(rows(tray([move(0, 'stuck', 10)], [tug(100, 5), tug(130, 3)], 130))).toEqual([[5, 'rooted', 0, 0, 0, 100], [5, 'waiting', 0, 130, 130, 130]]);
  });

  test('what was missing and turned up was never lost, and a later loss of the same kind still is', () => {
    const missing = move(50, 'unaccounted', 4, { lastSeen: 0 });
    expect(rows(tray([move(0, 'stuck', 10), missing, move(80, 'takenBack', 3, { undoes: missing.entryId })], [], 80))).toEqual([
      [1, 'lost', 0, 0, 0, 50], [9, 'waiting', 0, 0, 80, 80],
    ]);
  });

  test('received and found ones are under observation from that day on, those that came with roots never', () => {
    const came = move(100, 'received', 10);
    expect(rows(tray([came, move(120, 'found', 1), move(150, 'wentOn', 6)], [{ entryId: came.entryId, day: 100, rooted: 4, passing: true }], 150))).toEqual([
      [1, 'waiting', 120, 120, 150, 150], [2, 'rooted', 100, 100, 100, 150], [4, 'waiting', 100, 100, 150, 150],
    ]);
  });

  test.each([
    ['restuckOut', 'left', 90], ['givenOut', 'left', 0], ['mixedOut', 'left', 0], ['notRooted', 'called', 90],
  ] as const)('%s leaves undecided: %s, without roots on day %i', (effect, end, unrootedAt) => {
    expect(rows(tray([move(0, 'stuck', 4), move(90, effect, 4)]))).toEqual([[4, end, 0, unrootedAt, 90, 90]]);
  });

  test('lost on the day of sticking is lost by the next', () => {
    expect(rows(tray([move(0, 'stuck', 4), move(0, 'died', 4, { lastSeen: 0 })]))).toEqual([[4, 'lost', 0, 0, 0, 1]]);
  });
});

describe('what one entry and one day hold', () => {
  test('a count that finds more has found them without roots, whatever it tells of roots', () => {
    const count = { ...tug(100, 3), entryId: 'count' };
    expect(rows(tray([move(0, 'stuck', 10), { entryId: 'count', day: 100, effect: 'found', n: 2 }], [count], 100))).toEqual([
      [2, 'waiting', 100, 100, 100, 100], [3, 'rooted', 0, 0, 0, 100], [7, 'waiting', 0, 100, 100, 100],
    ]);
  });

  test.each(['died', 'unaccounted'] as const)('%s on the day of a tug: gone before it, so the tug says nothing of them', (effect) => {
    expect(rows(tray([move(0, 'stuck', 10), move(100, effect, 4, { lastSeen: 60 })], [tug(100, 5)], 100))).toEqual([
      [1, 'waiting', 0, 100, 100, 100], [4, 'lost', 0, 0, 60, 100], [5, 'rooted', 0, 0, 0, 100],
    ]);
  });

  test('thrown out on the day of a tug: after it, so they had no roots on that day', () => {
    expect(rows(tray([move(0, 'stuck', 10), move(100, 'thrownOut', 4)], [tug(100, 5)], 100))).toEqual([
      [1, 'waiting', 0, 100, 100, 100], [4, 'lost', 0, 100, 100, 101], [5, 'rooted', 0, 0, 0, 100],
    ]);
  });

  test('seen alive for the last time on the day of death is seen alive the day before', () => {
    expect(rows(tray([move(0, 'stuck', 1), move(60, 'died', 1, { lastSeen: 60 })]))).toEqual([[1, 'lost', 0, 0, 59, 60]]);
  });

  test('only what was missing is taken back, each loss once, and never the dead of the same count', () => {
    const of = (effect: Effect, n: number, undoes?: string): CuttingMovement => ({ entryId: 'count', day: 50, effect, n, ...(undoes !== undefined && { undoes }) });
    const left = (...movements: CuttingMovement[]) => withoutTakenBack(movements).map(({ effect, n }) => [effect, n]);
    expect(left(of('died', 2), of('unaccounted', 3), of('takenBack', 3, 'count'))).toEqual([['died', 2]]);
    expect(left(of('unaccounted', 3), of('unaccounted', 3), of('takenBack', 4, 'count'))).toEqual([['unaccounted', 2]]);
    expect(left(of('unaccounted', 3), of('takenBack', 1, 'count'), of('takenBack', 1, 'count'))).toEqual([['unaccounted', 1]]);
    expect(left(of('unaccounted', 3), of('takenBack', 3, 'another'))).toEqual([['unaccounted', 3]]);
  });
});

describe('how many with roots are still there', () => {
  test('who went on is gone, so the next tug tells of others', () => {
    expect(rows(tray([move(0, 'stuck', 10), move(110, 'wentOn', 5)], [tug(100, 5), tug(150, 2)], 150))).toEqual([
      [2, 'rooted', 0, 100, 100, 150], [3, 'waiting', 0, 150, 150, 150], [5, 'rooted', 0, 0, 0, 100],
    ]);
  });

  test.each(['died', 'givenOut', 'restuckOut'] as const)('%s takes rooted ones where no others are left', (effect) => {
    // Five of five rooted, two leave, three come later: a tug that tells four has seen one of these.
    expect(rows(tray([move(0, 'stuck', 5), move(120, effect, 2), move(130, 'found', 3)], [tug(100, 5), tug(150, 4)], 150))).toEqual([
      [1, 'rooted', 130, 130, 130, 150], [2, 'waiting', 130, 150, 150, 150], [5, 'rooted', 0, 0, 0, 100],
    ]);
  });

  test('more leave than are known: whoever is there has left, and later roots are new', () => {
    expect(rows(tray([move(0, 'stuck', 2), move(110, 'died', 9), move(130, 'found', 3)], [tug(100, 2), tug(150, 1)], 150))).toEqual([
      [1, 'rooted', 130, 130, 130, 150], [2, 'rooted', 0, 0, 0, 100], [2, 'waiting', 130, 150, 150, 150],
    ]);
  });

  test('given out with roots told: these leave, and the cuttings without roots are still followed', () => {
    const away = move(120, 'givenOut', 5);
    expect(rows(tray([move(0, 'stuck', 10), away], [tug(100, 5), { entryId: away.entryId, day: 120, rooted: 5, passing: true }, tug(150, 2)], 150))).toEqual([
      [2, 'rooted', 0, 100, 100, 150], [3, 'waiting', 0, 150, 150, 150], [5, 'rooted', 0, 0, 0, 100],
    ]);
  });

  test('all of those that came had roots: none is followed', () => {
    const came = move(30, 'received', 4);
    expect(rows(tray([came], [{ entryId: came.entryId, day: 30, rooted: 4, passing: true }], 60))).toEqual([]);
  });
});

describe('plants that change trays', () => {
  const split = (stated?: number) => {
    const entryId = `split${(entries += 1)}`;
    const told = stated === undefined ? [] : [{ entryId, day: 100, rooted: stated, passing: true }];
    return [
      tray([move(0, 'stuck', 10), { entryId, day: 100, effect: 'splitOut', n: 6 }], [tug(100, 5), ...told], 100),
      tray([{ entryId, day: 100, effect: 'splitIn', n: 6 }, move(140, 'wentOn', 3)], told, 100),
    ] as const;
  };

  test('keep what is known of them: unrooted on day 100, since a count comes before what leaves', () => {
    expect(rows(...split(3))).toEqual([[5, 'rooted', 0, 0, 0, 100], [5, 'waiting', 0, 100, 100, 100]]);
  });

  test('without a statement those without roots go first, whatever order the trays come in', () => {
    const [from, to] = split();
    const wanted = [[2, 'rooted', 0, 100, 100, 140], [3, 'waiting', 0, 100, 100, 100], [5, 'rooted', 0, 0, 0, 100]];
    expect(rows(from, to)).toEqual(wanted);
    expect(rows(to, from)).toEqual(wanted);
  });

  test('the tray that they left has so many fewer with roots', () => {
    const [from, to] = split(3);
    // Two of five are left there; a tug on day 120 that tells three has seen one more.
    expect(rows({ ...from, told: [...from.told, tug(120, 3)], lastSeen: 120 }, to)).toEqual([
      [1, 'rooted', 0, 100, 100, 120], [1, 'waiting', 0, 120, 120, 120], [3, 'waiting', 0, 100, 100, 100], [5, 'rooted', 0, 0, 0, 100],
    ]);
  });

  test('more roots told of them than anybody knew of were seen on that day', () => {
    const told = [{ entryId: 'move', day: 100, rooted: 3, passing: true }];
    expect(rows(tray([move(0, 'stuck', 10), { entryId: 'move', day: 100, effect: 'splitOut', n: 4 }], told), tray([{ entryId: 'move', day: 100, effect: 'splitIn', n: 4 }], told))).toEqual([
      [3, 'rooted', 0, 0, 0, 100], [7, 'waiting', 0, 0, 0, 0],
    ]);
  });

  test('are there when their new tray is tugged on that day, and before anything leaves it', () => {
    const from = tray([move(0, 'stuck', 3), { entryId: 'carried', day: 100, effect: 'splitOut', n: 3 }], [tug(90, 3)]);
    const to = tray([move(0, 'stuck', 4), { entryId: 'carried', day: 100, effect: 'splitIn', n: 3 }, move(100, 'wentOn', 3)], [tug(100, 3), { entryId: 'carried', day: 100, rooted: 3, passing: true }], 100);
    const wanted = [[3, 'rooted', 0, 0, 0, 90], [4, 'waiting', 0, 100, 100, 100]];
    for (const told of [[], [{ entryId: 'carried', day: 100, rooted: 3, passing: true }]]) {
      expect(rows({ ...from, told: [...from.told, ...told] }, to)).toEqual(wanted);
      expect(rows(to, { ...from, told: [...from.told, ...told] })).toEqual(wanted);
    }
  });

  test('and come back later', () => {
    const carry = (entryId: string, day: number, effect: Effect): CuttingMovement => ({ entryId, day, effect, n: 6 });
    const here = tray([move(0, 'stuck', 6), carry('there', 100, 'splitOut'), carry('back', 150, 'splitIn')], [tug(160, 2)], 160);
    const there = tray([carry('there', 100, 'splitIn'), carry('back', 150, 'splitOut')], [tug(120, 1)], 120);
    const wanted = [[1, 'rooted', 0, 0, 0, 120], [1, 'rooted', 0, 120, 120, 160], [4, 'waiting', 0, 160, 160, 160]];
    expect(rows(here, there)).toEqual(wanted);
    expect(rows(there, here)).toEqual(wanted);
  });

  test('from a tray that nobody knows: under observation from that day, without roots', () => {
    expect(rows(tray([{ entryId: 'from nowhere', day: 100, effect: 'givenIn', n: 5 }], [tug(130, 2)], 130))).toEqual([
      [2, 'rooted', 100, 100, 100, 130], [3, 'waiting', 100, 130, 130, 130],
    ]);
  });

  test('more arrive than left: the others are new', () => {
    const from = tray([move(0, 'stuck', 3), { entryId: 'more', day: 100, effect: 'splitOut', n: 3 }]);
    expect(rows(from, tray([{ entryId: 'more', day: 100, effect: 'splitIn', n: 5 }]))).toEqual([[2, 'waiting', 100, 100, 100, 100], [3, 'waiting', 0, 0, 0, 0]]);
  });
});

test('every cutting that came is in one row, and its days are in order', () => {
  const life = fc.record({
    stuck: fc.integer({ min: 1, max: 60 }),
    lives: fc.array(fc.record({ day: fc.nat(400), effect: fc.constantFrom('died', 'unaccounted', 'notRooted', 'wentOn', 'thrownOut', 'givenOut', 'restuckOut'), n: fc.integer({ min: 1, max: 20 }), lastSeen: fc.nat(400) }), { maxLength: 8 }),
    tugs: fc.array(fc.record({ day: fc.nat(400), rooted: fc.nat(20), look: fc.constantFrom('look', 'tug', 'lifted') }), { maxLength: 5 }),
  });
  fc.assert(fc.property(life, ({ stuck, lives, tugs }) => {
    const batch = tray([move(0, 'stuck', stuck), ...lives.map(({ day, effect, n, lastSeen }) => move(day, effect as Effect, n, { lastSeen: Math.min(day, lastSeen) }))], tugs.map(({ day, rooted, look }) => tug(day, rooted, look as RootsToldOn['look'])), 400);
    const all = followedCuttings([batch]);
    expect(all.reduce((sum, { plants }) => sum + plants, 0)).toBe(stuck);
    for (const { from, unrootedAt, aliveAt, by, end } of all) {
      expect(from <= unrootedAt && unrootedAt <= aliveAt && aliveAt <= by).toBe(true);
      if (end === 'rooted' || end === 'lost') expect(by).toBeGreaterThan(aliveAt);
    }
  }));
});
