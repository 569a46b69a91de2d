import type { Forecast } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** A line for each month ahead, then one for each past forecast with what came. */
export const forecastAsCsv = ({ species, asOf }: Forecast): string =>
  csvOf(
    ['species', 'made on', 'for', 'plants in pots or planted, expected', 'lower', 'upper', 'came', 'as of'],
    species.flatMap(({ taxon, months, past }) => [
      ...months.map(({ on, expected, lower, upper }) => [taxon, asOf, on, expected, lower, upper, undefined, asOf]),
      ...past.map(({ madeOn, on, expected, lower, upper, came }) => [taxon, madeOn, on, expected, lower, upper, came, asOf]),
    ]),
  );
