import { expect, test } from 'vitest';
import { STAGES } from './entry.ts';
import { isLater, refuseStageGoneBack } from './stage.ts';

const PAIRS = STAGES.flatMap((from, earlier) => STAGES.map((to, later) => [from, to, later > earlier] as const));

test.each(PAIRS)('from %s on to %s: %s', (from, to, may) => {
  expect(isLater(to, from)).toBe(may);
  if (may) expect(() => refuseStageGoneBack(from, to)).not.toThrow();
  else {
    expect(() => refuseStageGoneBack(from, to)).toThrow(
      expect.objectContaining({ name: 'DomainError', code: 'ledger/stage-gone-back', facts: { from, to } }),
    );
  }
});
