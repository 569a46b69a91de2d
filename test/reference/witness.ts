import fc from 'fast-check';
import { expect } from 'vitest';
import type { R } from './r.ts';

/** One of our functions beside R: what is asked, what we answer, and R code that answers the same. */
export interface Witness {
  readonly what: string;
  /** Asks both on so many random inputs; the seed makes a failure come back. */
  readonly agrees: (r: R, runs: number, seed: number) => Promise<void>;
}

interface How {
  /** Relative; R's own iterations promise no more than nine digits unless told. */
  readonly within?: number;
  /** Below this size the difference itself counts; next to nothing for tails, which must keep their digits. */
  readonly floor?: number;
}

export function witness<Input>(what: string, inputs: fc.Arbitrary<Input>, ours: (input: Input) => readonly number[], code: (input: Input) => string, { within = 1e-9, floor = 1 }: How = {}): Witness {
  return {
    what,
    async agrees(r, runs, seed) {
      const asked = fc.sample(inputs, { numRuns: runs, seed }).map((input) => ({ input, code: code(input), ours: ours(input) }));
      // One question for all of them: each crossing into WebAssembly costs more than the answer.
      const theirs = await r.numbers(`c(${asked.map((one) => one.code).join(',\n')})`);
      let next = 0;
      for (const one of asked) {
        one.ours.forEach((value) => {
          const other = theirs[next++] ?? Number.NaN;
          const isClose = Math.abs(value - other) <= within * Math.max(floor, Math.abs(value), Math.abs(other));
          expect(isClose, `seed ${seed}: for ${JSON.stringify(one.input)} R gives ${other}, not ${value}\n${one.code}`).toBe(true);
        });
      }
      expect(theirs).toHaveLength(next);
    },
  };
}

/** Plants that did it, of so many. */
export const someOf = (most: number): fc.Arbitrary<readonly [number, number]> => fc.integer({ min: 1, max: most }).chain((plants) => fc.tuple(fc.integer({ min: 0, max: plants }), fc.constant(plants)));

export const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
