import type { FunnelStage } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { StageMark, STAGES } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { type Loss, lossesOf } from './losses.ts';

/** Where plants were lost, most first, each with a bar beside its number. */
export function LossesTable({ about, stages }: { about: string; stages: readonly FunnelStage[] }) {
  const { readings: { stand: said } } = useMessages();
  const t = useTranslations('readings.stand');
  const { number } = useFormatter();
  const losses = lossesOf(stages);
  if (losses.length === 0) return <p className="text-ink-soft">{said.noLoss}</p>;
  const most = losses[0]?.plants ?? 1;
  return (
    <Table
      caption={`${said.lost}: ${about}`}
      isCaptionHidden
      rows={losses}
      keyOf={({ way, cause }) => cause ?? way}
      columns={[
        { head: said.way, cell: ({ way, cause = '' }) => <span className="block min-w-36 print:min-w-0">{way === 'died' ? t('causeOf', { cause }) : said[way]}</span> },
        { head: said.total, cell: ({ plants }) => <Length share={plants / most}>{number(plants)}</Length> },
        ...STAGES.filter((stage) => losses.some(({ at }) => at[stage])).map((stage) => ({
          head: <StageMark stage={stage} />, isNumber: true, cell: ({ at }: Loss) => (at[stage] ? number(at[stage]) : ''),
        })),
      ]}
    />
  );
}

function Length({ share, children }: { share: number; children: string }) {
  return (
    <span className="flex items-center gap-2">
      <span className="min-w-10 text-right tabular-nums">{children}</span>
      <svg viewBox="0 0 100 10" width="100" height="10" preserveAspectRatio="none" aria-hidden>
        <rect width={Math.max(1, share * 100)} height="10" className="fill-lichen-deep" />
      </svg>
    </span>
  );
}
