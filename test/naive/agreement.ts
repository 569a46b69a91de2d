import type { BatchIdentity, Books, Entry } from '@sprigline/domain';
import fc from 'fast-check';
import { expect } from 'vitest';
import { everythingOn, naiveAccount, realAccount } from './account.ts';
import { histories } from './histories.ts';

export type Replay = (batch: BatchIdentity, entries: readonly Entry[]) => Books;

const agreement = (replay: Replay) =>
  fc.property(histories, ({ batches, entries }) => {
    for (const batch of batches) {
      const said = everythingOn(batch.id, entries);
      expect(realAccount(batch, replay(batch, said))).toEqual(naiveAccount(batch, said));
    }
  });

/** Lets both replays loose on random histories; fails with the smallest that they read differently. */
export function expectAgreement(replay: Replay, numRuns: number): void {
  fc.assert(agreement(replay), { numRuns });
}

/** Whether random histories show up a difference; always the same histories. */
export function differs(replay: Replay, numRuns: number): boolean {
  return fc.check(agreement(replay), { numRuns, seed: 1934, endOnFailure: true }).failed;
}
