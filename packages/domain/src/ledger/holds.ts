import type { Effect, Flag } from './books.ts';
import { hasNoMinute } from './content-order.ts';
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
  const holding = new Map<string, Fact>();
  for (const fact of facts) {
    if (goesElsewhere(fact) && comesTooLate(fact, holding)) flags.push({ code: 'held-moved', entryId: fact.entryId, day: fact.day });
    if (startsHold(fact)) holding.set(fact.entryId, fact);
    if (fact.act === 'released') release(holding, fact.holdId);
  }
  return { heldBy: [...holding.keys()], flags };
}

function release(holding: Map<string, Fact>, holdId: string | undefined): void {
  if (holdId === undefined) holding.clear();
  else holding.delete(holdId);
}

const comesTooLate = (fact: Fact, holding: ReadonlyMap<string, Fact>): boolean =>
  [...holding.values()].some((hold) => !isToldBefore(fact, hold));

/**
 * Whether the lines of one act say that plants left before they were held: carried to where they stand apart, then
 * held there. At one moment a hold takes its turn first, so that a move told for itself has come too late.
 */
function isToldBefore({ key }: Fact, { act, key: ofHold }: Fact): boolean {
  const atOneMoment = key.moment === ofHold.moment || (hasNoMinute(key) && hasNoMinute(ofHold));
  if (act !== 'held' || key.day !== ofHold.day || !atOneMoment) return false;
  return key.workdayId === ofHold.workdayId && key.line > 0 && key.line < ofHold.line;
}

const startsHold = (fact: Fact): boolean =>
  fact.act === 'held' || (fact.act === 'arrived' && fact.arrivesHeld === true);

const goesElsewhere = (fact: Fact): boolean =>
  fact.act === 'carried' || (fact.act === 'left' && FORBIDDEN_WHILE_HELD.has(fact.effect));
