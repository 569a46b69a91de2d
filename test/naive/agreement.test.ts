import { replay } from '@sprigline/domain';
import { expect, test } from 'vitest';
import { naiveAccount, realAccount } from './account.ts';
import { expectAgreement } from './agreement.ts';
import { readSheet } from './sheet.ts';
import { concerning } from './sheet-totals.ts';

test('the replay and the naive one keep the same books of 500 random histories', () => {
  expectAgreement(replay, 500);
});

test('the replay and the naive one keep the same books of the log sheet', () => {
  const { batches, entries } = readSheet();
  for (const batch of batches) {
    const said = concerning(batch.id, entries);
    expect(realAccount(batch, replay(batch, said))).toEqual(naiveAccount(batch, said));
  }
});
