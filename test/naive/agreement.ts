import type { BatchIdentity, Books, Entry } from '@sprigline/domain';
import fc from 'fast-check';
import { expect } from 'vitest';
import { everythingOn, naiveAccount, realAccount } from './account.ts';
import { histories } from './histories.ts';

export type Replay = (batch: BatchIdentity, entries: readonly Entry[]) => Books;

/** Lets both replays loose on random histories; fails on the smallest that they read differently. */
export function expectAgreement(replay: Replay, numRuns: number, seed?: number): void {
  fc.assert(
    fc.property(histories, ({ batches, entries }) => {
      for (const batch of batches) {
        const said = everythingOn(batch.id, entries);
        expect(realAccount(batch, replay(batch, said))).toEqual(naiveAccount(batch, said));
      }
    }),
    { numRuns, ...(seed === undefined ? {} : { seed }) },
  );
}
