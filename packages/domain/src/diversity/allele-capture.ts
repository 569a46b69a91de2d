import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/**
 * Chance that at least one of these donors carries an allele: 1 - (1 - frequency)^(2 x donors).
 *
 * Donors, not plants: a hundred cuttings of one tree carry the two gene copies
 * of that tree and no more. Holds for unrelated donors of an outbreeding
 * species, drawn at random from the stand; for neighbours it is too hopeful.
 *
 * @param donors clone groups; a whole number, 0 or more
 * @param frequency of the allele in the stand, a share between 0 and 1, both excluded
 * @returns a share
 * @throws DomainError `diversity/not-a-count` for negative or broken donors
 * @throws DomainError `diversity/not-a-frequency` for a frequency outside (0, 1)
 *
 * Source: Brown AHD, Marshall DR (1995) in Guarino L et al. (eds) Collecting
 * Plant Genetic Diversity, CAB International, 75-91.
 */
export function alleleCapture(donors: number, frequency: number): number {
  if (!isCount(donors)) throw new DomainError('diversity/not-a-count', 'donors are a whole number', { donors });
  refuseUnlessFrequency(frequency);

  return -Math.expm1(2 * donors * Math.log1p(-frequency));
}

export function refuseUnlessFrequency(frequency: number): void {
  if (!(frequency > 0 && frequency < 1)) {
    throw new DomainError('diversity/not-a-frequency', 'an allele frequency lies between 0 and 1', { frequency });
  }
}
