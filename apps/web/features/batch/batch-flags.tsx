import type { Batch } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';

type Flagged = Pick<Batch, 'stage' | 'isMixed' | 'held' | 'unconfirmed' | 'calledOn'>;

/** What is special about a batch, each with its sign. */
export function BatchFlags({ batch: { stage, isMixed, held, unconfirmed, calledOn } }: { batch: Flagged }) {
  const said = useMessages().batches;
  const t = useTranslations('batches');
  return (
    <span className="flex flex-wrap items-center gap-x-4 gap-y-1 text-ink">
      <StageMark stage={stage} />
      {held && <Flag tone="grave">{said.held}</Flag>}
      {isMixed && <Flag tone="look">{said.mixed}</Flag>}
      {unconfirmed && <Flag tone="look">{said.unconfirmed}</Flag>}
      {calledOn && <Flag>{t('called', { day: sayDay(calledOn) })}</Flag>}
    </span>
  );
}
