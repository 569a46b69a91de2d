import { type Bench, copyOf } from './bench.ts';
import type { Fact } from './facts.ts';
import { minuteOf } from './order.ts';
import { play } from './play.ts';

const MOST_THAT_CAN_BE_TRIED = 8;

/** The facts of one entry stay together: an act and its count of none. */
type Act = readonly Fact[];

/** Would this day have added up in another order of what has no minute? Tries every one of them. */
export function anotherOrderAddsUp(morning: Bench, day: readonly Fact[]): boolean {
  const acts = inActs(day);
  const loose = acts.filter(isLoose);
  if (loose.length > MOST_THAT_CAN_BE_TRIED) throw new Error(`${loose.length} facts on one day are too many to try`);
  return orders(loose).some((order) => {
    const bench = copyOf(morning);
    bench.odd = 0;
    const next = order.values();
    play(bench, acts.flatMap((act) => (isLoose(act) ? (next.next().value ?? []) : act)));
    return bench.odd === 0;
  });
}

const isLoose = ([first]: Act): boolean =>
  first !== undefined && first.rank > 0 && minuteOf(first.entry) === undefined && first.deed.does !== 'nothing';

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
