import type { ReadingLine } from '@sprigline/contract';

/** Per cent of the whole width that one side has. */
const SIDE = 49;
/** What is there is never too thin to be seen. */
const THINNEST = 1;

/** How wide the two bars of each stage are, the widest on each side filling it. */
export function barWidths(stages: ReadingLine['stages']): { readonly plants: number; readonly donors: number }[] {
  const wide = (most: number) => (n: number): number => (n === 0 ? 0 : Math.max(THINNEST, (n / most) * SIDE));
  const [ofPlants, ofDonors] = [wide(Math.max(1, ...stages.map(({ plants }) => plants))), wide(Math.max(1, ...stages.map(({ donors }) => donors)))];
  return stages.map(({ plants, donors }) => ({ plants: ofPlants(plants), donors: ofDonors(donors) }));
}
