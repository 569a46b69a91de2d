import { DUST } from './neighbours.ts';
import { between, type Position } from './position.ts';

export interface NearestCopies {
  /** Infinite where no donor has two plants. */
  readonly nearest: number;
  readonly pairs: number;
}

/** How near the two nearest copies of one donor stand, and how many pairs stand as near: exact, by a sweep through each donor's plants. */
export function nearestCopies(donors: readonly number[], positions: readonly Position[]): NearestCopies {
  const own = new Map<number, Position[]>();
  for (const [at, donor] of donors.entries()) {
    const others = own.get(donor);
    if (others) others.push(positions[at]!);
    else own.set(donor, [positions[at]!]);
  }
  let [nearest, pairs] = [Number.POSITIVE_INFINITY, 0];
  for (const places of own.values()) {
    places.sort((one, other) => one.x - other.x);
    for (const [at, one] of places.entries()) {
      for (let next = at + 1; next < places.length && places[next]!.x - one.x < nearest + DUST; next += 1) {
        const distance = between(one, places[next]!);
        if (distance < nearest - DUST) [nearest, pairs] = [distance, 1];
        else if (distance < nearest + DUST) pairs += 1;
      }
    }
  }
  return { nearest, pairs };
}
