import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import type { MixedBatch } from './mixed-batch.ts';
import { mostDonorsFrom } from './most-donors-from.ts';

/** Donors: `atLeast <= expected <= atMost`. The ends are whole, the middle is not rounded. */
export interface MixedBounds {
  readonly atLeast: number;
  readonly expected: number;
  readonly atMost: number;
}

/**
 * How many donors are present when some batches are mixed and their make-up is not known.
 *
 * `atMost` is exact: the most donors that the plants can be dealt to, one plant
 * of a batch to one of its candidates (a largest matching).
 * `atLeast` is safe: mixed batches without a known donor among their candidates
 * are taken, fewest candidates first, as long as they share no candidate with
 * one taken before; each of these must bring a donor of its own. The true least
 * may be higher where candidates overlap in a ring; to find it is a hard puzzle
 * and a report should promise the safe figure anyway.
 * `expected` takes each plant to be of any candidate of its batch with equal chance.
 *
 * @param known donors with at least one plant that is surely theirs
 * @param mixed in any order
 * @throws DomainError `diversity/not-a-count` for a negative or broken count of plants
 * @throws DomainError `diversity/no-candidates` for a batch with plants and no candidate: count it as unknown
 *
 * Source: own definition; the expectation is the classic occupancy problem
 * (Feller W (1968) An Introduction to Probability Theory, vol. 1, chapter IV; from memory).
 */
export function mixedBounds(known: ReadonlySet<string>, mixed: readonly MixedBatch[]): MixedBounds {
  mixed.forEach(refuseUnlessMixed);
  const batches = mixed
    .filter(({ plants }) => plants > 0)
    .map(({ candidates, plants }) => ({ candidates: [...new Set(candidates)].toSorted(), plants }));
  return {
    atLeast: known.size + separateBatches(known, batches),
    expected: known.size + expectedOthers(known, batches),
    atMost: known.size + mostDonorsFrom(withoutKnown(known, batches)),
  };
}

/** Each of the batches counted here holds a donor that none of the others, nor `known`, can hold. */
function separateBatches(known: ReadonlySet<string>, batches: readonly MixedBatch[]): number {
  const taken = new Set(known);
  let separate = 0;
  for (const { candidates } of batches.toSorted(byCandidates)) {
    if (candidates.some((donorId) => taken.has(donorId))) continue;
    candidates.forEach((donorId) => taken.add(donorId));
    separate += 1;
  }
  return separate;
}

/** Fewest first; then by name, so that the order in which batches are given does not matter. */
function byCandidates({ candidates: a }: MixedBatch, { candidates: b }: MixedBatch): number {
  return a.length - b.length || (a.join() < b.join() ? -1 : 1);
}

function expectedOthers(known: ReadonlySet<string>, batches: readonly MixedBatch[]): number {
  const logOfMissing = new Map<string, number>();
  for (const { candidates, plants } of batches) {
    const missing = plants * Math.log1p(-1 / candidates.length);
    for (const donorId of candidates) logOfMissing.set(donorId, (logOfMissing.get(donorId) ?? 0) + missing);
  }
  return [...logOfMissing].reduce((sum, [donorId, log]) => (known.has(donorId) ? sum : sum - Math.expm1(log)), 0);
}

function withoutKnown(known: ReadonlySet<string>, batches: readonly MixedBatch[]): MixedBatch[] {
  return batches.map((batch) => ({ ...batch, candidates: batch.candidates.filter((donorId) => !known.has(donorId)) }));
}

function refuseUnlessMixed({ candidates, plants }: MixedBatch): void {
  if (!isCount(plants)) throw new DomainError('diversity/not-a-count', 'plants are a whole number', { plants });
  if (plants > 0 && candidates.length === 0) {
    throw new DomainError('diversity/no-candidates', 'a mixed batch names the donors that may be in it', { plants });
  }
}
