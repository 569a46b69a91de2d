import { fitVaryingChance, type FittedChance } from '../planning/varying-chance-fit.ts';
import type { PastSticking } from './question.ts';
import { rootingPrior, type RootingPrior, type SpeciesRow } from './species-row.ts';

export interface RootingChance extends FittedChance {
  /** The programme's own cuttings whose end is known. */
  readonly goneOn: number;
  readonly settled: number;
  readonly prior: RootingPrior;
}

/**
 * The chance of a cutting to root and go on: the programme's own closed stickings of the species, tree by tree, drawn
 * towards what is published of it, or towards a working rule where nothing is.
 *
 * @throws DomainError `survival/not-a-count`, as `fitVaryingChance`
 */
export function rootingChance(past: readonly PastSticking[], species: SpeciesRow | undefined): RootingChance {
  const prior = rootingPrior(species);
  const donors = new Map<string, { successes: number; plants: number }>();
  for (const { donorId, goneOn, settled } of past) {
    const sum = donors.get(donorId) ?? { successes: 0, plants: 0 };
    donors.set(donorId, { successes: sum.successes + goneOn, plants: sum.plants + settled });
  }
  const outcomes = [...donors.values()];
  return {
    ...fitVaryingChance(outcomes, prior), prior,
    goneOn: outcomes.reduce((sum, { successes }) => sum + successes, 0),
    settled: outcomes.reduce((sum, { plants }) => sum + plants, 0),
  };
}
