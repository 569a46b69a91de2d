import { totalPlants } from './total-plants.ts';

export interface Chao1 {
  /** Donors seen. */
  readonly seen: number;
  /** Donors at least, those not seen among them. */
  readonly atLeast: number;
}

/**
 * How many donors there are at least, those of which no plant was found among them: from how many were found once and twice.
 *
 * For plants whose donor tree is read afterwards (a lost label, a gene test), never for a list that somebody chose.
 *
 * @param plantsPerDonor one whole number for each donor found
 * @throws DomainError `diversity/not-a-count`, `diversity/no-plants` as `totalPlants`
 *
 * Source: Chao A (1984) Scand. J. Stat. 11:265-270, bias-corrected form with the sample's own size; from memory.
 */
export function chao1(plantsPerDonor: readonly number[]): Chao1 {
  const plants = totalPlants(plantsPerDonor);
  const seen = plantsPerDonor.filter((n) => n > 0).length;
  const [once, twice] = [1, 2].map((times) => plantsPerDonor.filter((n) => n === times).length) as [number, number];
  const part = (plants - 1) / plants;
  return { seen, atLeast: seen + (twice > 0 ? (part * once * once) / (2 * twice) : (part * once * (once - 1)) / 2) };
}
