import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { singlePlaceDonors } from './single-place-donors.ts';

describe('singlePlaceDonors', () => {
  test('finds the donors that one bench holds alone, the fewest plants first', () => {
    const stock = [
      { donorId: 'a', placeId: 'bench 1', plants: 5 },
      { donorId: 'a', placeId: 'bench 1', plants: 4 },
      { donorId: 'b', placeId: 'bench 1', plants: 5 },
      { donorId: 'b', placeId: 'bench 2', plants: 1 },
      { donorId: 'c', placeId: 'bench 2', plants: 3 },
      { donorId: 'c', placeId: 'bench 1', plants: 0 },
      { donorId: 'd', placeId: 'bench 2', plants: 0 },
    ];

    expect(singlePlaceDonors(stock)).toEqual([
      { donorId: 'c', placeId: 'bench 2', plants: 3 },
      { donorId: 'a', placeId: 'bench 1', plants: 9 },
    ]);
  });

  const row = fc.record({
    donorId: fc.constantFrom('a', 'b', 'c', 'd'),
    placeId: fc.constantFrom('1', '2', '3'),
    plants: fc.integer({ min: 0, max: 9 }),
  });

  test('losing a place takes exactly the donors that it held alone', () => {
    fc.assert(
      fc.property(fc.array(row), fc.constantFrom('1', '2', '3'), (stock, lost) => {
        const donors = (rows: typeof stock) => new Set(rows.filter((r) => r.plants > 0).map((r) => r.donorId));
        const left = donors(stock.filter((r) => r.placeId !== lost));
        const gone = [...donors(stock)].filter((donorId) => !left.has(donorId));

        expect(singlePlaceDonors(stock).filter((r) => r.placeId === lost).map((r) => r.donorId).sort()).toEqual(gone.sort());
      }),
    );
  });

  test.each([-1, 0.5, Number.NaN])('answers diversity/not-a-count for %d plants', (plants) => {
    expect(() => singlePlaceDonors([{ donorId: 'a', placeId: '1', plants }])).toThrow(
      expect.objectContaining({ name: 'DomainError', code: 'diversity/not-a-count' }),
    );
  });
});
