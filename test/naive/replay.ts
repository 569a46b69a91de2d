import type { BatchIdentity, Entry } from '@sprigline/domain';
import { type Bench, copyOf, emptyBench, raise } from './bench.ts';
import { whatStands } from './effective.ts';
import { type Fact, factsOf } from './facts.ts';
import { before, daysBetween, standing } from './order.ts';
import { anotherOrderAddsUp } from './order-unknown.ts';
import { play } from './play.ts';

/**
 * The books of one batch, by the plainest way that can be seen to be right:
 * plant by plant, day by day, every order tried. It is the second witness to
 * the replay of the domain and shares nothing with it but the types.
 */
export function naiveReplay(batch: BatchIdentity, said: readonly Entry[]): Bench {
  const { entries, flags } = whatStands(said);
  const facts = entries
    .flatMap((entry) => factsOf(entry, batch))
    .sort((a, b) => before(standing(a.entry, a.rank), standing(b.entry, b.rank)));
  const bench = emptyBench(batch, !facts.some(({ isOpening }) => isOpening));
  bench.flags.push(...flags);

  const touching = new Map(facts.map(({ entry }) => [entry.id, entry]));
  for (const entry of touching.values()) {
    if (daysBetween(entry.receivedOn, entry.observedOn) > 1) raise(bench, 'day-in-future', entry);
    if (entry.clockUnsure === true) raise(bench, 'clock-unsure', entry);
  }
  for (const { observedOn, saying } of entries) {
    if (saying.kind === 'died' || (saying.kind === 'noted' && saying.lookedOver)) {
      if (saying.batchId === batch.id) bench.lookedOverOn = later(bench.lookedOverOn, observedOn);
    }
    if (saying.kind !== 'counted' || saying.batchId !== batch.id) continue;
    if (saying.look === 'tug' || saying.look === 'lifted') bench.strongLookOn = later(bench.strongLookOn, observedOn);
    if (saying.sampleOf !== undefined) bench.sampledOn = later(bench.sampledOn, observedOn);
  }
  for (const day of new Set(facts.map(({ entry }) => entry.observedOn))) {
    playDay(bench, facts.filter(({ entry }) => entry.observedOn === day));
  }
  return bench;
}

const later = (known: string | undefined, day: string): string => (known === undefined || day > known ? day : known);

function playDay(bench: Bench, day: readonly Fact[]): void {
  const morning = copyOf(bench);
  play(bench, day);
  const last = day.findLast(({ deed }) => deed.does !== 'note');
  if (last && anotherOrderAddsUp(morning, day)) raise(bench, 'order-unknown', last.entry);
}
