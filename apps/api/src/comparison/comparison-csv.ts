import type { Comparison, TrialLayout } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** Headings say what stands below them; shares and differences are of one, not of a hundred. */
export const comparisonAsCsv = ({ by, groups, pairs, against, asOf, rootedMeans }: Comparison): string =>
  csvOf(
    [by, 'cuttings', 'rooted', 'lost', 'undecided', 'left without verdict', 'donor trees', 'trays', 'days of sticking', 'share rooted', 'if none of the rest', 'if all of the rest', 'Wilson lower', 'Wilson upper',
      'by donor lower', 'by donor upper', 'donor trees differ by a factor of', 'compared with', 'comparison', 'mixed up with', 'difference', 'difference lower', 'difference upper', 'limits by',
      'odds ratio', 'odds lower', 'odds upper', 'chance', 'chance for all pairs at once', 'as of', 'rooted means'],
    groups.map((group) => {
      const pair = pairs.find(({ first }) => first === group.key);
      const { found } = pair ?? {};
      return [
        nameIn(group), group.cuttings, group.rooted, group.lost, group.undecided, group.leftWithoutVerdict, group.donors, group.trays, group.days, group.share ?? undefined,
        group.range?.lower, group.range?.upper, group.wilson?.lower, group.wilson?.upper, ...(group.byDonor?.kind === 'interval' ? [group.byDonor.lower, group.byDonor.upper] : [undefined, undefined]),
        group.donorsDiffer?.factor, pair && nameIn(groups.find(({ key }) => key === against)), pair?.state, pair?.mixedUpWith.join('; '), found?.difference, found?.lower, found?.upper, found?.limitsBy,
        found?.odds?.ratio ?? undefined, found?.odds?.lower ?? undefined, found?.odds?.upper ?? undefined, found?.chance ?? undefined, found?.chanceOfAll ?? undefined, asOf, rootedMeans,
      ];
    }),
  );

const nameIn = (group: Comparison['groups'][number] | undefined): string => [group?.name || group?.key || 'not told', group?.hormone?.form].filter(Boolean).join(', ');

/** A line a donor tree; the order is that in which its halves are stuck. */
export const layoutAsCsv = ({ first, second, blocks, cuttingsEach }: TrialLayout): string =>
  csvOf(['donor tree', 'stuck first', 'stuck second', 'cuttings of each'], blocks.map(({ donor, order }) => [donor, ...order.map((arm) => ({ first, second })[arm].name), cuttingsEach ?? undefined]));
