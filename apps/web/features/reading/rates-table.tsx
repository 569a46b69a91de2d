import type { DonorSpread, FunnelStage } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Table } from '../../ui/table.tsx';
import { percent, percentRange } from '../../lib/percent.ts';

interface RatesTableProps {
  readonly about: string;
  readonly stages: readonly FunnelStage[];
  readonly nameOf: (stage: FunnelStage['stage']) => string;
  /** The day by which all cuttings have their verdict; young plants and trees have none. */
  readonly verdictOn: string | null;
}

/** Table twin of the shares and their ranges. */
export function RatesTable({ about, stages, nameOf, verdictOn }: RatesTableProps) {
  const { readings: { stand: said } } = useMessages();
  return (
    <Table
      caption={`${said.rates}: ${about}`}
      isCaptionHidden
      rows={stages}
      keyOf={({ stage }) => stage}
      columns={[
        { head: said.stage, cell: ({ stage }) => nameOf(stage) },
        { head: said.rate, cell: ({ stage, survival }) => <div className="min-w-44 print:min-w-0"><Rate survival={survival} verdictOn={stage === 'cutting' ? verdictOn : null} /></div> },
        { head: said.undecided, isNumber: true, cell: ({ survival }) => <span className="whitespace-nowrap">{survival ? `${survival.undecided} (${percent(survival.undecidedShare)})` : ''}</span> },
        { head: said.alone, isNumber: true, cell: ({ wilson }) => wilson && <span className="whitespace-nowrap">{percentRange(wilson)}</span> },
        { head: said.byDonor, isNumber: true, cell: ({ byDonor }) => byDonor && <ByDonor spread={byDonor} /> },
      ]}
    />
  );
}

/** While many wait for a verdict, a range says more than a rate that will change. */
function Rate({ survival, verdictOn }: { survival: FunnelStage['survival']; verdictOn: string | null }) {
  const t = useTranslations('readings.stand');
  if (survival?.rate === undefined) return t('none');
  const rate = percent(survival.rate);
  if (!survival.needsRange) return <span className="font-semibold">{rate}</span>;
  return (
    <>
      <span className="font-semibold whitespace-nowrap">{percentRange(survival.range)}</span>
      <span className="block text-sm text-ink-soft">{t('decided', { rate })}</span>
      {verdictOn && <span className="block text-sm text-ink-soft">{t('verdictBy', { day: sayDay(verdictOn) })}</span>}
      {!survival.isRankable && <span className="block text-sm text-ink-soft">{t('openEnd')}</span>}
    </>
  );
}

function ByDonor({ spread }: { spread: DonorSpread }) {
  const t = useTranslations('readings.stand');
  if (spread.kind === 'interval') return <span className="whitespace-nowrap">{percentRange(spread)}</span>;
  const { best, worst, because } = spread;
  if (because === 'donors-all-alike') return t('alike');
  return t('best', { label: best.label, successes: best.successes, plants: best.plants, worstLabel: worst.label, worstSuccesses: worst.successes, worstPlants: worst.plants });
}
