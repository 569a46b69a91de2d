import { type Entry, replay } from '@sprigline/domain';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { everythingOn } from './account.ts';
import { histories } from './histories.ts';

const RUNS = { numRuns: 300 };

describe('the replay answers to the letter the same, flags and all,', () => {
  test('in whatever order entries arrive, and however often', () => {
    fc.assert(
      fc.property(histories, ({ batches, entries }) => {
        const once = [...new Map(entries.map((entry) => [entry.id, entry])).values()];
        const sorted = once.sort((a, b) => (a.id < b.id ? -1 : 1));
        for (const batch of batches) {
          expect(replay(batch, [...entries, ...sorted])).toEqual(replay(batch, sorted));
        }
      }),
      RUNS,
    );
  });

  test('whether or not it is told what happened to other batches', () => {
    fc.assert(
      fc.property(histories, ({ batches, entries }) => {
        for (const batch of batches) {
          expect(replay(batch, entries)).toEqual(replay(batch, everythingOn(batch.id, entries)));
        }
      }),
      RUNS,
    );
  });

  test('after anything at all was withdrawn, as if it had never been said', () => {
    fc.assert(
      fc.property(histories, fc.nat(40), ({ batches, entries }, number) => {
        const said = entries.filter(({ saying }) => !('entryId' in saying));
        const slip = said[number % said.length];
        if (slip === undefined || batches.some(({ openingEntryId }) => openingEntryId === slip.id)) return;
        const corrected = entries.filter(({ saying }) => 'entryId' in saying && saying.entryId === slip.id);
        const others = entries.filter((entry) => entry.id !== slip.id && !corrected.includes(entry));
        for (const batch of batches) {
          expect(replay(batch, [...others, slip, withdrawalOf(slip)])).toEqual(replay(batch, others));
        }
      }),
      RUNS,
    );
  });
});

const withdrawalOf = (slip: Entry): Entry => ({
  id: `withdraws ${slip.id}`,
  observedOn: slip.observedOn,
  receivedOn: slip.receivedOn,
  door: 'desk',
  saying: { kind: 'withdrawn', entryId: slip.id, sawVersion: slip.id },
});
