import { replay } from '@sprigline/domain';
import { test } from 'vitest';
import { expectAgreement } from './agreement.ts';

test('the replay and the naive one keep the same books of 500 random histories', () => {
  expectAgreement(replay, 500);
});
