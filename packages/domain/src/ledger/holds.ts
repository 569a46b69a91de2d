import type { Effect, Flag } from './books.ts';
import type { Fact } from './fact.ts';

/** What a hold forbids: anything that could carry a disease to another place. */
const FORBIDDEN_WHILE_HELD: ReadonlySet<Effect> = new Set<Effect>(['wentOn', 'splitOut', 'givenOut', 'givenAcross']);

export interface Holds {
  /** Entries that hold the batch after the last of the facts, in the order in which they do; none when it may go. */
  readonly heldBy: readonly string[];
  /** `held-moved`, for what left or was carried elsewhere all the same. */
  readonly flags: readonly Flag[];
}

/** @param facts of one batch, in order */
export function holdsOf(facts: readonly Fact[]): Holds {
  const flags: Flag[] = [];
  // A tray may be held for two reasons: a clean sample ends one of them.
  const holding = new Set<string>();
  for (const fact of facts) {
    if (holding.size > 0 && goesElsewhere(fact)) flags.push({ code: 'held-moved', entryId: fact.entryId, day: fact.day });
    if (startsHold(fact)) holding.add(fact.entryId);
    if (fact.act === 'released') release(holding, fact.holdId);
  }
  return { heldBy: [...holding], flags };
}

function release(holding: Set<string>, holdId: string | undefined): void {
  if (holdId === undefined) holding.clear();
  else holding.delete(holdId);
}

const startsHold = (fact: Fact): boolean =>
  fact.act === 'held' || (fact.act === 'arrived' && fact.arrivesHeld === true);

const goesElsewhere = (fact: Fact): boolean =>
  fact.act === 'carried' || (fact.act === 'left' && FORBIDDEN_WHILE_HELD.has(fact.effect));
