import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shares } from './cards.ts';

test.each([
  [150, 60, [60, 60, 30]], [120, 60, [60, 60]], [60, 60, [60]], [59, 60, [59]], [0, 60, []], [150, undefined, [150]], [0, undefined, []],
])('%d cuttings, %s a card', (cuttings, most, cards) => {
  expect(shares(cuttings, most)).toEqual(cards);
});

test('no cutting is lost between cards, and no card is empty or too full', () => {
  fc.assert(fc.property(fc.nat(5_000), fc.integer({ min: 1, max: 300 }), (cuttings, most) => {
    const cards = shares(cuttings, most);
    expect(cards.reduce((sum, n) => sum + n, 0)).toBe(cuttings);
    expect(cards.every((n) => n >= 1 && n <= most)).toBe(true);
  }));
});
