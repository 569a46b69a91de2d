import type { DonorSpread, FunnelStage } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { percent } from './percent.ts';
import { WorkedOut } from './worked-out.tsx';

/** How many went on, stage by stage, with both ranges and the words that tell them apart. */
export function RatesTable({ about, stages }: { about: string; stages: readonly FunnelStage[] }) {
  const { readings: { stand: said } } = useMessages();
  const rows = stages.filter(({ reached }) => reached > 0);
  return (
    <>
      <Table
        caption={`${said.rates}: ${about}`}
        isCaptionHidden
        rows={rows}
        keyOf={({ stage }) => stage}
        columns={[
          { head: said.stage, cell: ({ stage }) => (stage === 'planted' ? said.aliveAtSite : <StageMark stage={stage} />) },
          { head: said.rate, cell: ({ survival }) => <Rate survival={survival} /> },
          { head: said.undecided, isNumber: true, cell: ({ survival }) => (survival ? `${survival.undecided} (${percent(survival.undecidedShare)})` : '') },
          { head: said.alone, cell: ({ wilson }) => wilson && <Range range={wilson} /> },
          { head: said.byDonor, cell: ({ byDonor }) => byDonor && <ByDonor spread={byDonor} /> },
        ]}
      />
      <p className="mt-3 max-w-prose text-ink-soft">{said.difference}</p>
      <WorkedOut what="rates" />
    </>
  );
}

/** While many wait for a verdict, a range says more than a rate that will change. */
function Rate({ survival }: { survival: FunnelStage['survival'] }) {
  const t = useTranslations('readings.stand');
  if (survival?.rate === undefined) return t('none');
  const rate = percent(survival.rate);
  if (!survival.needsRange) return rate;
  return (
    <>
      {t('between', { lower: percent(survival.range.lower), upper: percent(survival.range.upper), rate })}
      {!survival.isRankable && <span className="block text-sm text-ink-soft">{t('openEnd')}</span>}
    </>
  );
}

function Range({ range: { lower, upper } }: { range: { lower: number; upper: number } }) {
  return useTranslations('readings.stand')('range', { lower: percent(lower), upper: percent(upper) });
}

function ByDonor({ spread }: { spread: DonorSpread }) {
  const t = useTranslations('readings.stand');
  if (spread.kind === 'interval') return <Range range={spread} />;
  const { best, worst, because } = spread;
  if (because === 'donors-all-alike') return t('alike');
  return t('best', { label: best.label, successes: best.successes, plants: best.plants, worstLabel: worst.label, worstSuccesses: worst.successes, worstPlants: worst.plants });
}
