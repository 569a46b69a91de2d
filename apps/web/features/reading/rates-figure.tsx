import type { FunnelStage } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { percent, percentRange } from '../../lib/percent.ts';
import { RateKey, RateTracks } from './rate-tracks.tsx';
import { RatesTable } from './rates-table.tsx';
import { WorkedOut } from './worked-out.tsx';

/** How many went on, stage by stage: what is open, both ranges, and the words that tell them apart. */
export function RatesFigure({ about, stages, verdictOn }: { about: string; stages: readonly FunnelStage[]; verdictOn: string | null }) {
  const t = useTranslations('readings.stand');
  const stageWords = useTranslations('words.stage');
  const rows = stages.filter(({ reached }) => reached > 0);
  const nameOf = (stage: FunnelStage['stage']) => (stage === 'planted' ? t('aliveAtSite') : stageWords(stage));
  const until = (stage: FunnelStage['stage']) => (stage === 'cutting' && verdictOn !== null ? ` (${t('verdictBy', { day: sayDay(verdictOn) })})` : '');
  const list = rows.flatMap(({ stage, survival }) => {
    if (survival?.rate === undefined) return [];
    return survival.needsRange ? t('spreadRange', { stage: nameOf(stage), range: percentRange(survival.range) }) + until(stage) : t('spreadPart', { stage: nameOf(stage), rate: percent(survival.rate) });
  });
  const sentence = t('spreadSays', { n: list.length, list: list.join('; ') });
  return (
    <figure>
      <figcaption className="mb-3 max-w-prose first-letter:uppercase">{sentence}</figcaption>
      <div className="mb-6 flex flex-wrap items-center gap-x-12 gap-y-4">
        <RateTracks title={t('spreadTitle', { about })} description={sentence} stages={rows} nameOf={nameOf} />
        <RateKey hasExtremes={rows.some(({ byDonor }) => byDonor?.kind === 'best-and-worst')} />
      </div>
      <RatesTable about={about} stages={rows} nameOf={nameOf} verdictOn={verdictOn} />
      <p className="mt-3 max-w-prose text-ink-soft">{t('difference')}</p>
      <div className="mt-3 text-sm"><WorkedOut what="rates" /></div>
    </figure>
  );
}
