import { EFFECTS_IN, EFFECTS_OUT, FLAG_CODES } from '@sprigline/domain';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { everythingOn } from './account.ts';
import { histories } from './histories.ts';
import { naiveReplay } from './replay.ts';

const drawn = fc.sample(histories, { numRuns: 600, seed: 1934 });
const benches = drawn.flatMap(({ batches, entries }) =>
  batches.map((batch) => naiveReplay(batch, everythingOn(batch.id, entries))),
);

describe('six hundred random histories', () => {
  test.each(FLAG_CODES)('raise %s in five batches or more', (code) => {
    expect(benches.filter(({ flags }) => flags.some((flag) => flag.code === code)).length).toBeGreaterThanOrEqual(5);
  });

  test.each([...EFFECTS_IN, ...EFFECTS_OUT])('book %s in twenty batches or more', (effect) => {
    expect(benches.filter(({ moved }) => moved.some((one) => one.effect === effect)).length).toBeGreaterThanOrEqual(20);
  });

  test.each(['minute', 'workdayId', 'line', 'clockUnsure'] as const)('tell a %s now and then, and mostly not', (what) => {
    const entries = drawn.flatMap((history) => history.entries);
    const telling = entries.filter((entry) => entry[what] !== undefined).length;
    expect(telling).toBeGreaterThan(entries.length / 100);
    expect(telling).toBeLessThan((entries.length * 3) / 4);
  });

  test('never let plants out of nowhere or into nothing', () => {
    const comesIn = new Set<string>(EFFECTS_IN);
    for (const { moved, here } of benches) {
      const came = moved.filter(({ effect }) => comesIn.has(effect)).length;
      expect(here).toBe(2 * came - moved.length);
    }
  });
});
