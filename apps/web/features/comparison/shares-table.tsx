import type { CompareBy, ComparedGroup } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { percent, percentRange } from '../../lib/percent.ts';
import { Table } from '../../ui/table.tsx';
import { groupName } from './group-name.ts';

/** Table twin of the shares: cuttings, where they are, and both ranges. */
export function SharesTable({ groups, by }: { groups: readonly ComparedGroup[]; by: CompareBy }) {
  const words = useMessages();
  const { shares: said } = words.comparison;
  const { number } = useFormatter();
  return (
    <Table
      caption={said.heading}
      isCaptionHidden
      isStacked
      rows={groups}
      keyOf={({ key }) => key}
      columns={[
        { head: said.group, cell: (group) => groupName(group, by, words) },
        { head: said.cuttings, isNumber: true, cell: ({ cuttings }) => number(cuttings) },
        { head: said.rooted, isNumber: true, cell: ({ rooted }) => number(rooted) },
        { head: said.lost, isNumber: true, cell: ({ lost }) => number(lost) },
        { head: said.undecided, isNumber: true, cell: ({ undecided }) => number(undecided) },
        { head: said.donors, isNumber: true, cell: ({ donors }) => number(donors) },
        { head: said.trays, isNumber: true, cell: ({ trays }) => trays > 0 && number(trays) },
        { head: said.share, cell: (group) => <Share group={group} /> },
        { head: said.alone, isNumber: true, cell: ({ wilson }) => wilson && <span className="whitespace-nowrap">{percentRange(wilson)}</span> },
        { head: said.byDonor, isNumber: true, cell: (group) => <ByDonor group={group} /> },
      ]}
    />
  );
}

/** While many wait for a verdict, a range says more than a share that will change. */
function Share({ group: { share, range, needsRange, isRankable, verdictOn } }: { group: ComparedGroup }) {
  const t = useTranslations('comparison.shares');
  if (share === null) return null;
  if (!needsRange || !range) return <span className="font-semibold">{percent(share)}</span>;
  return (
    <>
      <span className="font-semibold whitespace-nowrap">{percentRange(range)}</span>
      <span className="block text-sm text-ink-soft">{t('decided', { rate: percent(share) })}</span>
      {verdictOn && <span className="block text-sm text-ink-soft">{t('calledBy', { day: sayDay(verdictOn) })}</span>}
      {!isRankable && <span className="block text-sm text-ink-soft">{t('tooFew')}</span>}
    </>
  );
}

/** So seldom by chance that trees must differ. */
const SELDOM = 0.05;

function ByDonor({ group: { byDonor, donorsDiffer } }: { group: ComparedGroup }) {
  const t = useTranslations('comparison.shares');
  if (!byDonor) return null;
  if (byDonor.kind === 'interval') {
    return (
      <>
        <span className="whitespace-nowrap">{percentRange(byDonor)}</span>
        {donorsDiffer && <span className="block text-sm text-ink-soft">{donorsDiffer.chance < SELDOM ? t('treesDiffer', { factor: donorsDiffer.factor.toFixed(1) }) : t('treesAlike')}</span>}
      </>
    );
  }
  const { best, worst, because } = byDonor;
  if (best.donorId === worst.donorId && byDonor.donors === 1) return t('onlyTree', { label: best.label });
  if (because === 'donors-all-alike') return t('alike');
  return t('best', { label: best.label, successes: best.successes, plants: best.plants, worstLabel: worst.label, worstSuccesses: worst.successes, worstPlants: worst.plants });
}
