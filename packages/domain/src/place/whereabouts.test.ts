import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exposure, regimeOn } from './exposure.ts';
import { type PlaceInHistory, whereabouts } from './whereabouts.ts';

const place = (id: string, parentId?: string, moves: PlaceInHistory['moves'] = []): [string, PlaceInHistory] => [id, { id, parentId, moves }];
const move = (movedOn: string, fromId: string, toId: string, writtenAt = `${movedOn}T12:00:00Z`) => ({ movedOn, fromId, toId, writtenAt });

// Tray 1 lay on bench A of the house until 1 November, then on bench B; nothing else was ever moved.
const NURSERY = new Map([place('tray', 'B', [move('2026-11-01', 'A', 'B')]), place('A', 'house'), place('B', 'house'), place('frame'), place('house')]);

describe('whereabouts', () => {
  test('a tray that was carried took its batch along, and is at both places on that day', () => {
    expect(whereabouts([{ placeId: 'tray', from: '2026-10-10' }], NURSERY)).toEqual([
      { from: '2026-10-10', until: '2026-11-01', path: ['tray', 'A', 'house'] },
      { from: '2026-11-01', until: undefined, path: ['tray', 'B', 'house'] },
    ]);
  });

  test('before it came and after it left, the tray’s moves are not the batch’s', () => {
    expect(whereabouts([{ placeId: 'tray', from: '2026-10-10', until: '2026-10-20' }, { placeId: 'frame', from: '2026-10-20' }], NURSERY)).toEqual([
      { from: '2026-10-10', until: '2026-10-20', path: ['tray', 'A', 'house'] },
      { from: '2026-10-20', until: undefined, path: ['frame'] },
    ]);
  });

  test('a move told late takes its place by its day', () => {
    const late = new Map([...NURSERY, place('tray', 'B', [move('2026-11-01', 'A', 'B'), move('2026-10-20', 'B', 'frame', '2026-11-20T12:00:00Z')])]);
    expect(whereabouts([{ placeId: 'tray', from: '2026-10-10' }], late).map(({ from, path }) => [from, path[1]])).toEqual([
      ['2026-10-10', 'A'], ['2026-10-20', 'frame'], ['2026-11-01', 'B'],
    ]);
  });
});

describe('exposure', () => {
  const where = whereabouts([{ placeId: 'tray', from: '2026-10-10' }], NURSERY);
  const house = { id: 'r1', placeId: 'house', fromDay: '2026-09-01' };
  const bench = { id: 'r2', placeId: 'B', fromDay: '2026-11-15' };

  test('the house’s regime holds until the bench has one of its own', () => {
    expect(exposure(where, [house, bench])).toEqual([
      { from: '2026-10-10', until: '2026-11-15', regime: house },
      { from: '2026-11-15', until: undefined, regime: bench },
    ]);
  });

  test('before anything was told, nothing is known', () => {
    expect(exposure(where, [bench])).toEqual([
      { from: '2026-10-10', until: '2026-11-15', regime: undefined },
      { from: '2026-11-15', until: undefined, regime: bench },
    ]);
  });

  test('a new regime of the same place ends the one before', () => {
    const next = { id: 'r3', placeId: 'house', fromDay: '2026-10-20' };
    expect(exposure(where, [next, house]).map(({ from, regime }) => [from, regime?.id])).toEqual([['2026-10-10', 'r1'], ['2026-10-20', 'r3']]);
    expect(regimeOn('2026-10-19', ['tray', 'A', 'house'], [next, house])).toBe(house);
  });

  const day = fc.integer({ min: 1, max: 28 }).map((n) => `2026-10-${String(n).padStart(2, '0')}`);
  test('every day of a stay is under one regime, the one that a look-up of that day finds', () => {
    fc.assert(
      fc.property(day, fc.array(fc.tuple(fc.constantFrom('tray', 'A', 'house'), day), { maxLength: 8 }), (from, told) => {
        const regimes = [...new Map(told.map(([placeId, fromDay]) => [`${placeId}${fromDay}`, { id: `${placeId}${fromDay}`, placeId, fromDay }])).values()];
        const path = ['tray', 'A', 'house'];
        const parts = exposure([{ from, path }], regimes);
        expect(parts[0]?.from).toBe(from);
        expect(parts.at(-1)?.until).toBeUndefined();
        for (const [at, part] of parts.entries()) {
          expect(part.regime).toEqual(regimeOn(part.from, path, regimes));
          if (at > 0) expect(parts[at - 1]?.until).toBe(part.from);
        }
      }),
    );
  });
});
