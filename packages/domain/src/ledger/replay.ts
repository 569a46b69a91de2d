import type { BatchIdentity, Books } from './books.ts';
import { bookDay } from './book-day.ts';
import { type EffectiveEntries, effectiveEntries, entriesAbout } from './effective-entries.ts';
import type { Entry } from './entry.ts';
import type { Fact } from './fact.ts';
import { factsOfBatch } from './facts-of-batch.ts';
import { flagsOfTime, inContentOrder } from './flag.ts';
import { holdsOf } from './holds.ts';
import { emptyLedger, type Ledger } from './ledger.ts';
import { looksOf } from './looks.ts';
import { oldestFirst } from './newest-first.ts';
import { rootedOf } from './rooted.ts';
import { staysOf } from './stays.ts';
import { touchedBatches } from './touched-batches.ts';

/**
 * The books of one batch, from everything that was ever said of it.
 *
 * The same entries give the same books, flags included, in whatever order they
 * arrive and however often each of them does. Nothing is refused and nothing is
 * thrown away: what cannot be is booked as far as it can, and flagged.
 *
 * @param batch what is fixed about it, whatever becomes of its opening entry
 * @param entries every entry that names the batch in any of its versions, with
 *   all corrections of it; others do no harm
 */
export function replay(batch: BatchIdentity, entries: readonly Entry[]): Books {
  const concerning = entriesAbout(batch.id, entries);
  const told = effectiveEntries(concerning);
  const standing = told.effective.filter(({ saying }) => touchedBatches(saying).includes(batch.id));
  const facts = factsOfBatch(batch.id, standing);
  const openingStands = standing.some(({ id }) => id === batch.openingEntryId);
  const ledger = byDay(facts).reduce(bookDay, emptyLedger(batch, openingStands));
  const { heldBy, flags: heldMoved } = holdsOf(facts);
  const flags = [...oldestFirst(ledger.flags), ...heldMoved, ...standing.flatMap(flagsOfTime), ...flagsOfChains(told)];

  return {
    balance: ledger.balance,
    movements: oldestFirst(ledger.movements),
    stays: staysOf(batch, facts),
    rooted: rootedOf(ledger),
    lastSeen: ledger.sights.last,
    looks: looksOf(batch.id, standing),
    notFound: stillInStock(ledger),
    heldBy,
    unconfirmed: ledger.unconfirmed,
    calledOn: ledger.calledOn,
    flags: inContentOrder(flags, [...concerning, ...told.effective]),
  };
}

/** The days of the batch, each with its facts in order. */
function byDay(facts: readonly Fact[]): Fact[][] {
  const days: Fact[][] = [];
  for (const fact of facts) {
    const today = days.at(-1);
    if (today?.[0]?.day === fact.day) today.push(fact);
    else days.push([fact]);
  }
  return days;
}

const flagsOfChains = ({ rivals, unverified, waiting }: EffectiveEntries) => [...rivals, ...unverified, ...waiting];

/** Trees that were missed once and died or were thrown out since are not missed any more. */
const stillInStock = ({ notFound, balance }: Ledger): number => Math.min(notFound, balance);
