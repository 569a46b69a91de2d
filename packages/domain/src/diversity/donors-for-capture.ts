import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessFrequency } from './allele-capture.ts';

export interface DonorsForCapture {
  /** Gene copies to sample; also the number of plants, where the species fertilises itself. */
  readonly copies: number;
  /** Unrelated donors of an outbreeding species, two copies each. */
  readonly donors: number;
}

/**
 * The fewest donors that hold an allele with a wanted chance: `alleleCapture` turned round.
 *
 * @param chance wanted, a share between 0 and 1, both excluded
 * @param frequency of the allele in the stand, a share between 0 and 1, both excluded
 * @returns whole numbers, at least 1
 * @throws DomainError `diversity/not-a-chance` for a chance outside (0, 1)
 * @throws DomainError `diversity/not-a-frequency` for a frequency outside (0, 1), or too small for any count of donors
 *
 * Source: Brown AHD, Marshall DR (1995) in Guarino L et al. (eds) Collecting
 * Plant Genetic Diversity, CAB International, 75-91.
 */
export function donorsForCapture(chance: number, frequency: number): DonorsForCapture {
  if (!(chance > 0 && chance < 1)) {
    throw new DomainError('diversity/not-a-chance', 'a wanted chance lies between 0 and 1', { chance });
  }
  refuseUnlessFrequency(frequency);

  const exact = Math.log1p(-chance) / Math.log1p(-frequency);
  // The rounding error of the two logarithms must not ask for one more copy where the answer is whole.
  const copies = Math.max(1, Math.ceil(exact - exact * 1e-12));
  if (!isCount(copies)) throw new DomainError('diversity/not-a-frequency', 'an allele so rare asks for more donors than can be counted', { frequency });
  return { copies, donors: Math.ceil(copies / 2) };
}
