import type { RootingCurves } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** A line for each step of each curve; shares are between 0 and 1 and hold from that week on. */
export const curvesAsCsv = ({ groups, asOf, rootedMeans }: RootingCurves): string =>
  csvOf(
    ['group', 'cuttings', 'donor trees', 'after week', 'by week', 'share rooted', 'lower', 'upper', 'share lost', 'limits by', 'method', 'as of', 'rooted means'],
    groups.flatMap(({ name, cuttings, donors, steps, limitsBy, method }) =>
      steps.map(({ since, week, rooted, lower, upper, lost }) => [name, cuttings, donors, since, week, rooted, lower, upper, lost, limitsBy, method, asOf, rootedMeans]),
    ),
  );
