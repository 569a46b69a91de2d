import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TRAY } from '../../test/ledger/books-of.ts';
import { entryWith, history } from '../../test/ledger/histories.ts';
import * as say from '../../test/ledger/sayings.ts';
import type { Books, Effect } from './books.ts';
import { EFFECTS_IN } from './books.ts';
import type { Entry } from './entry.ts';
import { replay } from './replay.ts';

const books = (entries: readonly Entry[]): Books => replay(TRAY, entries);
const at = (day: string, id: string, saying: Entry['saying']): Entry => ({
  id,
  observedOn: day,
  receivedOn: day,
  door: 'desk',
  saying,
});
const BRINGS_IN: ReadonlySet<Effect> = new Set(EFFECTS_IN);

describe('the same entries give the same books, flags included', () => {
  test('in any order of arrival', () => {
    const shuffled = history.chain((entries) =>
      fc.tuple(fc.constant(entries), fc.shuffledSubarray(entries, { minLength: entries.length })),
    );
    fc.assert(
      fc.property(shuffled, ([entries, arrived]) => {
        expect(books(arrived)).toEqual(books(entries));
      }),
    );
  });

  test('each sent twice', () => {
    fc.assert(
      fc.property(history, (entries) => {
        expect(books([...entries, ...entries.toReversed()])).toEqual(books(entries));
      }),
    );
  });

  test('beside whatever was said of other batches', () => {
    const elsewhere = entryWith('x1').map(
      (entry): Entry => ({ ...entry, saying: { ...entry.saying, batchId: 'other' } as Entry['saying'] }),
    );
    fc.assert(
      fc.property(history, elsewhere, (entries, other) => {
        fc.pre(!('toBatchId' in other.saying && other.saying.toBatchId === 'tray'));
        expect(books([other, ...entries])).toEqual(books(entries));
      }),
    );
  });
});

describe('the books close', () => {
  test('balance = in - out, and never falls below zero on the way', () => {
    fc.assert(
      fc.property(history, (entries) => {
        const { balance, movements } = books(entries);
        let plants = 0;
        for (const { effect, n } of movements) {
          expect(n).toBeGreaterThan(0);
          plants += BRINGS_IN.has(effect) ? n : -n;
          expect(plants).toBeGreaterThanOrEqual(0);
        }
        expect(balance).toBe(plants);
      }),
    );
  });

  test('no loss is taken back that was not unaccounted, nor more of it than was lost', () => {
    fc.assert(
      fc.property(history, (entries) => {
        const open = new Map<string, number>();
        for (const { effect, entryId, n, undoes } of books(entries).movements) {
          if (effect === 'unaccounted') open.set(entryId, (open.get(entryId) ?? 0) + n);
          if (effect === 'takenBack') open.set(undoes!, (open.get(undoes!) ?? 0) - n);
        }
        expect([...open.values()].filter((n) => n < 0)).toEqual([]);
      }),
    );
  });

  test('a whole count on a day of its own is what the books say after it', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 0, max: 12 }), (entries, alive) => {
        const counted = at('2025-12-01', 'n1', say.counted(alive));
        expect(books([...entries, counted])).toMatchObject({ balance: alive, notFound: 0 });
      }),
    );
  });

  test('every loss lies between a day that saw the plants and its own', () => {
    fc.assert(
      fc.property(history, (entries) => {
        for (const { lastSeen, day } of books(entries).movements) if (lastSeen) expect(lastSeen <= day).toBe(true);
      }),
    );
  });
});

describe('a withdrawal restores', () => {
  const mend = (id: string, saying: Entry['saying']): Entry => at('2025-10-12', id, saying);

  test('the books before the entry', () => {
    fc.assert(
      fc.property(history, entryWith('n1'), (entries, slip) => {
        expect(books([...entries, slip, mend('n2', say.withdrawn('n1'))])).toEqual(books(entries));
      }),
    );
  });

  test('and a replacement that saw the withdrawal, the books with it', () => {
    fc.assert(
      fc.property(history, entryWith('n1'), (entries, slip) => {
        const { observedOn, minute, saying } = slip;
        const saw = { sawVersion: 'n2', ...(minute !== undefined && { minute }) };
        const back = say.replaced('n1', observedOn, saying, saw);
        const mended = [...entries, slip, mend('n2', say.withdrawn('n1')), mend('n3', back)];
        expect(books(mended)).toEqual(books([...entries, slip]));
      }),
    );
  });
});
