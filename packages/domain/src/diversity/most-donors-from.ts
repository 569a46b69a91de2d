import type { MixedBatch } from './mixed-batch.ts';

/**
 * The most different donors that these batches can hold at once, each plant being of one candidate.
 *
 * A largest matching of donors to plants: a donor takes a free plant, or takes
 * one from a donor that can be served elsewhere, and so on along the chain
 * (Kuhn HW (1955) Naval Res. Logist. Q. 2:83-97, from memory). Donors, not
 * plants, are searched, so a batch of 10,000 costs no more than one of ten.
 *
 * @param batches candidates each named once, whole plants; not checked again here
 * @returns donors, a whole number
 */
export function mostDonorsFrom(batches: readonly MixedBatch[]): number {
  const shelves = batches.map((batch): Shelf => ({ ...batch, holders: new Set() }));
  const donors = new Set(batches.flatMap(({ candidates }) => candidates));
  return [...donors].filter((donorId) => takesPlant(donorId, shelves, new Set())).length;
}

interface Shelf extends MixedBatch {
  /** Donors that a plant of this batch has been given to. */
  readonly holders: Set<string>;
}

/** Gives the donor a plant, if need be by sending another donor elsewhere. No batch is asked twice. */
function takesPlant(donorId: string, shelves: readonly Shelf[], asked: Set<Shelf>): boolean {
  for (const shelf of shelves) {
    if (asked.has(shelf) || !shelf.candidates.includes(donorId)) continue;
    asked.add(shelf);

    const { holders, plants } = shelf;
    const yielding = holders.size < plants ? undefined : [...holders].find((other) => takesPlant(other, shelves, asked));
    if (holders.size >= plants && yielding === undefined) continue;
    if (yielding !== undefined) holders.delete(yielding);
    holders.add(donorId);
    return true;
  }
  return false;
}
