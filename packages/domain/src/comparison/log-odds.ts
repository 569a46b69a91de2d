/** Log odds of a row: the intercept, and the terms as the estimates after it weigh them. */
export const logOdds = (terms: readonly number[], estimates: readonly number[]): number => terms.reduce((sum, term, at) => sum + term * estimates[at + 1]!, estimates[0]!);

/** The share that has these log odds, 0 to 1. */
export const shareAt = (odds: number): number => 1 / (1 + Math.exp(-odds));

/** Its logarithm, which has digits where the share itself has none left. */
export const logShareAt = (odds: number): number => (odds >= 0 ? -Math.log1p(Math.exp(-odds)) : odds - Math.log1p(Math.exp(odds)));
