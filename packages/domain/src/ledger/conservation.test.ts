import fc from 'fast-check';
import { expect, test } from 'vitest';
import { refuseUnlessSound, sumOf } from '../survival/stage-tally.ts';
import type { BatchIdentity, Books, Effect } from './books.ts';
import type { Entry, Saying } from './entry.ts';
import { replay } from './replay.ts';
import { sumTally } from './sum-tally.ts';

// Four batches of one sticking, two at each of two stages. Each of the first three opens the next.
const CUTTINGS = ['A', 'B'] as const;
const LINERS = ['C', 'D'] as const;
const BATCHES: BatchIdentity[] = [...CUTTINGS, ...LINERS].map((id, index) => ({
  id,
  stage: index < 2 ? 'cutting' : 'liner',
  stickingId: 'sticking',
  openingEntryId: `o${index}`,
  openingPlaceId: 'bench',
}));

const entry = (id: string, date: number, saying: Saying): Entry => ({
  id,
  observedOn: `2025-03-${String(date).padStart(2, '0')}`,
  receivedOn: '2025-04-01',
  door: 'outbox',
  saying,
});

const passing =
  (kind: 'moved' | 'lifted') =>
  (batchId: string, toBatchId: string, n: number): Saying => ({ kind, batchId, toBatchId, n, placeId: 'bench' });
const moved = passing('moved');
const lifted = passing('lifted');

const openings = (n: number): Entry[] => [
  entry('o0', 1, { kind: 'stuck', batchId: 'A', stickingId: 'sticking', n, placeId: 'bench' }),
  entry('o1', 2, moved('A', 'B', 1)),
  entry('o2', 3, lifted('A', 'C', 1)),
  entry('o3', 4, moved('C', 'D', 1)),
];

const few = fc.integer({ min: 1, max: 9 });
const batch = fc.constantFrom('A', 'B', 'C', 'D');
const within = fc.constantFrom(['A', 'B'], ['B', 'A'], ['C', 'D'], ['D', 'C']) as fc.Arbitrary<[string, string]>;
const onwards = fc.constantFrom(['A', 'C'], ['A', 'D'], ['B', 'D']) as fc.Arbitrary<[string, string]>;

const anything: fc.Arbitrary<Saying> = fc.oneof(
  fc.tuple(within, few).map(([[from, to], n]) => moved(from, to, n)),
  fc.tuple(onwards, few).map(([[from, to], n]) => lifted(from, to, n)),
  fc.tuple(batch, few).map(([batchId, n]): Saying => ({ kind: 'died', batchId, n, cause: 'mould', certainty: 'seen' })),
  fc.tuple(batch, few).map(([batchId, n]): Saying => ({ kind: 'givenOut', batchId, n })),
  fc.tuple(batch, few).map(([batchId, n]): Saying => ({ kind: 'found', batchId, n, reason: 'behind' })),
  fc.tuple(batch, few).map(([batchId, alive]): Saying => ({ kind: 'counted', batchId, alive, look: 'look', dead: [] })),
);

const sayings = (of: fc.Arbitrary<Saying>): fc.Arbitrary<Entry[]> =>
  fc.array(fc.tuple(fc.integer({ min: 5, max: 20 }), of), { maxLength: 14 }).map((told) =>
    told.map(([date, saying], index) => entry(`e${String(index).padStart(2, '0')}`, date, saying)),
  );

const allBooks = (entries: readonly Entry[]): Books[] => BATCHES.map((identity) => replay(identity, entries));
const plants = (books: readonly Books[], ...effects: Effect[]): number =>
  books
    .flatMap(({ movements }) => movements)
    .reduce((sum, { effect, n }) => (effects.includes(effect) ? sum + n : sum), 0);

test('stock and exits are what was stuck and found, for the whole sticking', () => {
  fc.assert(
    fc.property(few, sayings(anything), (n, told) => {
      const books = allBooks([...openings(n), ...told]);
      const stock = books.reduce((sum, { balance }) => sum + balance, 0);
      const exits = plants(books, 'died', 'unaccounted', 'notRooted', 'givenOut') - plants(books, 'takenBack');

      expect(stock + exits).toBe(plants(books, 'stuck', 'found'));
      expect(plants(books, 'splitIn', 'wentIn')).toBe(plants(books, 'splitOut', 'wentOn'));
    }),
  );
});

test('the tallies of a sticking are sound, and tell the same', () => {
  fc.assert(
    fc.property(few, sayings(anything), (n, told) => {
      const books = allBooks([...openings(n), ...told]);
      const tallies = sumTally(BATCHES.map(({ stage }, index) => ({ stage, books: books[index]! })));

      tallies.forEach(refuseUnlessSound);
      expect(tallies.reduce((sum, { died }) => sum + sumOf(died), 0)).toBe(plants(books, 'died'));
      expect(tallies.reduce((sum, { goneOn }) => sum + goneOn, 0)).toBe(plants(books, 'wentOn'));
    }),
  );
});

test('splitting, moving and joining as many as are there loses nothing and flags nothing', () => {
  const steps = fc.array(fc.tuple(fc.boolean(), few, fc.boolean()), { maxLength: 15 });
  fc.assert(
    fc.property(few, steps, (n, wishes) => {
      const there = { A: n + 1, B: 1 };
      const told = wishes.flatMap(([forth, wish, carry], index): Entry[] => {
        const [from, to] = forth ? (['A', 'B'] as const) : (['B', 'A'] as const);
        if (carry) return [entry(`e${index}`, 5 + index, { kind: 'moved', batchId: from, placeId: 'bench 2' })];
        const taken = Math.min(wish, there[from]);
        there[from] -= taken;
        there[to] += taken;
        return taken === 0 ? [] : [entry(`e${index}`, 5 + index, moved(from, to, taken))];
      });
      const [a, b] = allBooks([...openings(n + 3), ...told]);

      expect([a!.balance, b!.balance]).toEqual([there.A, there.B]);
      expect([...a!.flags, ...b!.flags]).toEqual([]);
    }),
  );
});

test('a late entry touches the batches that it names and no other', () => {
  fc.assert(
    fc.property(few, sayings(anything), fc.tuple(batch, few), (n, told, [named, deaths]) => {
      const late = entry('late', 1, { kind: 'died', batchId: named, n: deaths, cause: 'mould', certainty: 'seen' });
      const before = allBooks([...openings(n), ...told]);
      const after = allBooks([...openings(n), ...told, late]);

      BATCHES.forEach(({ id }, index) => {
        if (id !== named) expect(after[index]).toEqual(before[index]);
      });
    }),
  );
});
