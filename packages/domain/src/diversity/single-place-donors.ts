import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/** Some plants of one donor (clone group) in one place. */
export interface PlantsInPlace {
  readonly donorId: string;
  /** A house, bench or site: what one failed timer or one frost would take. Not a tray, which moves. */
  readonly placeId: string;
  readonly plants: number;
}

/**
 * Donors whose plants all stand in one place: one mishap there and the donor is gone.
 *
 * @param stock any number of rows a donor and place; rows of 0 plants say nothing
 * @returns one row a donor, fewest plants first, then by id
 * @throws DomainError `diversity/not-a-count` for a negative or broken count
 *
 * Source: common practice of the trade.
 */
export function singlePlaceDonors(stock: readonly PlantsInPlace[]): readonly PlantsInPlace[] {
  const placesOf = new Map<string, Map<string, number>>();
  for (const { donorId, placeId, plants } of stock) {
    if (!isCount(plants)) throw new DomainError('diversity/not-a-count', 'plants are a whole number', { plants });
    if (plants === 0) continue;

    const places = placesOf.get(donorId) ?? new Map<string, number>();
    placesOf.set(donorId, places.set(placeId, (places.get(placeId) ?? 0) + plants));
  }
  return [...placesOf]
    .filter(([, places]) => places.size === 1)
    .flatMap(([donorId, places]) => [...places].map(([placeId, plants]) => ({ donorId, placeId, plants })))
    .toSorted((a, b) => a.plants - b.plants || (a.donorId < b.donorId ? -1 : 1));
}
