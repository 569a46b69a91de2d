import { type Bench, copyOf } from './bench.ts';
import type { Fact } from './facts.ts';
import { minuteOf } from './order.ts';
import { play } from './play.ts';

const MOST_THAT_CAN_BE_TRIED = 8;

/** The facts of one entry stay together: an act and its count of none. */
type Act = readonly Fact[];

/**
 * Does the day not add up as it is told, though it would in another order of
 * what has no minute? Tries every one of them. What has a minute stays where it
 * is, and what is odd about it is not for the others to mend.
 */
export function anotherOrderAddsUp(morning: Bench, day: readonly Fact[]): boolean {
  const acts = inActs(day);
  const loose = acts.filter(isLoose);
  if (!isOdd(morning, acts, loose)) return false;
  if (loose.length > MOST_THAT_CAN_BE_TRIED) throw new Error(`${loose.length} facts on one day are too many to try`);
  return orders(loose).some((order) => {
    const next = order.values();
    const otherDay = acts.map((act) => (isLoose(act) ? (next.next().value ?? []) : act));
    return !isOdd(morning, otherDay, loose);
  });
}

/** Does one of the loose facts meet plants too many or too few? */
function isOdd(morning: Bench, day: readonly Act[], loose: readonly Act[]): boolean {
  const bench: Bench = { ...copyOf(morning), odd: [] };
  play(bench, day.flat());
  return loose.some(([first]) => first !== undefined && bench.odd.includes(first.entry.id));
}

const isLoose = ([first]: Act): boolean =>
  first !== undefined && first.rank > 0 && minuteOf(first.entry) === undefined && first.deed.does !== 'note';

function inActs(day: readonly Fact[]): Act[] {
  const acts = new Map<string, Fact[]>();
  for (const fact of day) acts.set(fact.entry.id, [...(acts.get(fact.entry.id) ?? []), fact]);
  return [...acts.values()];
}

function orders<T>(things: readonly T[]): T[][] {
  if (things.length === 0) return [[]];
  return things.flatMap((first, at) =>
    orders(things.filter((_, index) => index !== at)).map((rest) => [first, ...rest]),
  );
}
