import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { booksOf, flagsOf, type Line, movementsOf, TRAY } from '../../test/ledger/books-of.ts';
import { replay } from './replay.ts';
import { type Sorting, sortingActs, sortingSum } from './sort-tray.ts';
import type { Entry, Saying } from './entry.ts';

const NOTHING: Sorting = { inBooks: 0, lifted: 0, potted: 0, back: 0, dead: 0, thrownOut: 0 };
const DAY = '2026-04-02';

/** The acts as entries of one day, one line after the other. @param minute of that day, where somebody looked at the clock */
function linesOf(sorting: Sorting, minute?: number): Line[] {
  return sortingActs(sorting).map((act, at): Line => [DAY, sayingOf(act, sorting), { line: at + 1, minute }]);
}

function sayingOf(act: ReturnType<typeof sortingActs>[number], { dead }: Sorting): Saying {
  const batchId = 'tray';
  switch (act.kind) {
    case 'found':
      return { kind: 'found', batchId, n: act.n, reason: 'two in one hole' };
    case 'counted':
      return { ...act, batchId, look: 'lifted', dead: dead > 0 ? [{ n: dead, cause: 'black base', certainty: 'seen' }] : [] };
    case 'thrownOut':
      return { ...act, batchId, reason: 'broken' };
    default:
      return { ...act, batchId, toBatchId: act.kind, placeId: 'bench 2' };
  }
}

const stuck = (n: number): Line => ['2025-10-02', { kind: 'stuck', batchId: 'tray', stickingId: 'sticking', n, placeId: 'bench 1' }];

describe('30 = lifted 14 + back 9 + died 5 + thrown out 1, and 1 nobody has seen', () => {
  const sorting = { ...NOTHING, inBooks: 30, lifted: 14, back: 9, dead: 5, thrownOut: 1 };

  test('the sum says that one is missing', () => {
    expect(sortingSum(sorting)).toEqual({ told: 29, unaccounted: 1, over: 0 });
  });

  test('the books come to the nine put back, and say one is unaccounted for', () => {
    const books = booksOf([stuck(30), ...linesOf(sorting, 600)]);

    expect(books.balance).toBe(9);
    expect(movementsOf(books)).toEqual(['e1 stuck 30', 'e2 died 5 black base', 'e2 unaccounted 1', 'e3 thrownOut 1 broken', 'e4 wentOn 14']);
    expect(flagsOf(books)).toEqual([]);
  });

  test('without the time of day the books are the same, and somebody is asked: the one thrown out may be the one missing', () => {
    const [timed, untimed] = [600, undefined].map((minute) => booksOf([stuck(30), ...linesOf(sorting, minute)]));

    expect(untimed?.movements).toEqual(timed?.movements);
    expect(untimed && flagsOf(untimed)).toEqual(['e4 order-unknown']);
  });

  test('found under the bench and put back, nothing is missing', () => {
    const books = booksOf([stuck(30), ...linesOf({ ...sorting, back: 10 })]);

    expect(movementsOf(books)).not.toContain('e2 unaccounted 1');
    expect(books.balance).toBe(10);
  });
});

test('roots of those put back are told where somebody looked, and unknown where nobody did', () => {
  const counted = (sorting: Partial<Sorting>) => sortingActs({ ...NOTHING, inBooks: 20, lifted: 8, ...sorting }).find(({ kind }) => kind === 'counted');

  expect(counted({ back: 12 })).toMatchObject({ alive: 20, rooted: undefined });
  expect(counted({ back: 12, backRooted: 2, backCallused: 3 })).toMatchObject({ alive: 20, rooted: 10, callused: 3 });
  expect(counted({ dead: 12 })).toMatchObject({ alive: 8, rooted: 8 });
});

test('an emptied tray is called by the act that leaves none', () => {
  const books = booksOf([stuck(10), ...linesOf({ ...NOTHING, inBooks: 10, lifted: 4, potted: 3, dead: 2, thrownOut: 1 })]);

  expect(books.balance).toBe(0);
  expect(books.calledOn).toBe(DAY);
  expect(flagsOf(books)).toEqual([]);
});

const few = fc.nat({ max: 40 });
const sortings = fc.record({ lifted: few, potted: few, back: few, dead: few, thrownOut: few, missing: fc.nat({ max: 5 }), extra: fc.nat({ max: 5 }) }).filter(
  ({ lifted, potted, back, dead, thrownOut, missing, extra }) => lifted + potted + back + dead + thrownOut + missing - extra > 0,
);

test('sorting conserves plants: what was in the tray is in it, gone on, dead, thrown out or missing', () => {
  fc.assert(
    fc.property(sortings, fc.option(fc.nat({ max: 1439 }), { nil: undefined }), ({ missing, extra, ...parts }, minute) => {
      const inBooks = parts.lifted + parts.potted + parts.back + parts.dead + parts.thrownOut + missing - extra;
      const sorting = { ...parts, inBooks: Math.max(0, inBooks) };
      const entries: Entry[] = [stuck(sorting.inBooks), ...linesOf(sorting)].map(([observedOn, saying, more], at) => ({
        id: `e${at + 1}`, observedOn, receivedOn: observedOn, door: 'desk', saying, ...more, ...(at > 0 && { minute }),
      }));
      const books = replay(TRAY, entries);
      const sum = (effect: string) => books.movements.filter((movement) => movement.effect === effect).reduce((all, { n }) => all + n, 0);
      const { unaccounted, over } = sortingSum(sorting);

      expect(books.balance).toBe(parts.back);
      expect(sum('wentOn')).toBe(parts.lifted + parts.potted);
      expect(sum('died')).toBe(parts.dead);
      expect(sum('thrownOut')).toBe(parts.thrownOut);
      expect([sum('unaccounted'), sum('found')]).toEqual([unaccounted, over]);
      const out = ['wentOn', 'died', 'thrownOut', 'unaccounted', 'notRooted'].reduce((all, effect) => all + sum(effect), 0);
      expect(sorting.inBooks + sum('found')).toBe(books.balance + out);
      // What arrives in the next batches is what left here.
      for (const kind of ['lifted', 'potted'] as const) {
        const next = replay({ ...TRAY, id: kind, stage: kind === 'lifted' ? 'liner' : 'potted', openingEntryId: entries.find(({ saying }) => saying.kind === kind)?.id ?? '' }, entries);
        expect(next.balance).toBe(parts[kind]);
      }
    }),
  );
});

test.each([-1, 2.5, Number.NaN])('refuses %d plants', (lifted) => {
  expect(() => sortingActs({ ...NOTHING, inBooks: 3, lifted })).toThrow(expect.objectContaining({ code: 'ledger/not-a-count' }));
});
