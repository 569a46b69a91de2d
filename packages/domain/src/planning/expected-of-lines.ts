import { betaBinomial, chanceOfNone, refuseUnlessVarying, type VaryingChance } from '../distribution/beta-binomial.ts';
import { normalQuantile } from '../distribution/normal.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';

export interface ExpectedNumber {
  readonly expected: number;
  /** Whole numbers: with the stated confidence it will be from here … */
  readonly lower: number;
  /** … to here. */
  readonly upper: number;
}

export interface ExpectedOfLines {
  readonly plants: ExpectedNumber;
  /** Trees with one plant at least. */
  readonly donors: ExpectedNumber;
}

/** Beyond so many cuttings the sum is so near to normal that adding up every chance is wasted. */
const ADDED_UP = 3_000;

/**
 * What so many cuttings of each donor tree will bring, and within which limits.
 *
 * Cuttings of a tree fare together (beta-binomial), trees by themselves. Up to 3,000 cuttings the chances are added up
 * exactly; beyond, the plants' limits are those of a normal distribution with the same mean and variance. The chance itself
 * is taken for known: where it rests on few trees the truth can lie further out.
 *
 * @param cuttings whole numbers, one a donor tree
 * @param confidence of the limits, between 0 and 1
 * @throws DomainError `survival/not-a-count`, `survival/not-a-level`, `numbers/not-a-share`
 */
export function expectedOfLines(cuttings: readonly number[], chance: VaryingChance, confidence = 0.8): ExpectedOfLines {
  refuseUnlessVarying(chance);
  refuseUnlessConfidence(confidence);
  const arrives = cuttings.map((n) => 1 - chanceOfNone(n, chance));
  const all = cuttings.reduce((sum, n) => sum + n, 0);
  const donors = limits(sumOf(arrives.map((one) => [1 - one, one])), total(arrives), confidence);
  const plants = all * chance.mean;
  return { donors, plants: all > ADDED_UP ? nearNormal(cuttings, chance, confidence) : limits(sumOf(cuttings.map((n) => betaBinomial(n, chance))), plants, confidence) };
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

/** Chances of each sum of independent numbers. */
function sumOf(each: readonly (readonly number[])[]): number[] {
  return each.reduce<number[]>((sums, one) => {
    const next: number[] = [];
    for (const [n, before] of sums.entries()) for (const [k, more] of one.entries()) next[n + k] = (next[n + k] ?? 0) + before * more;
    return next;
  }, [1]);
}

/** What rounding leaves of a whole is not a chance. */
const DUST = 1e-12;

/** The middle part of the chances: at most half of the rest on either side. */
function limits(chances: readonly number[], expected: number, confidence: number): ExpectedNumber {
  const outside = (1 - confidence) / 2;
  let sum = 0;
  // Chances of so many or fewer; of all or fewer it is certain.
  const upTo = chances.slice(0, -1).map((chance) => (sum += chance));
  return { expected, lower: upTo.filter((chance) => chance <= outside + DUST).length, upper: upTo.filter((chance) => chance < 1 - outside - DUST).length };
}

function nearNormal(cuttings: readonly number[], { mean, likeness }: VaryingChance, confidence: number): ExpectedNumber {
  const all = total(cuttings);
  const spread = normalQuantile((1 + confidence) / 2) * Math.sqrt(mean * (1 - mean) * total(cuttings.map((n) => n * (1 + (n - 1) * likeness))));
  return { expected: all * mean, lower: Math.max(0, Math.floor(all * mean - spread)), upper: Math.min(all, Math.ceil(all * mean + spread)) };
}
