import type { HoldShown } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Card } from '../../ui/card.tsx';
import { Tag } from '../../ui/tag.tsx';

/** One hold: what, why, since when, and which plants it keeps where they stand. */
export function HoldCard({ programme, hold, children }: { programme: string; hold: HoldShown; children?: ReactNode }) {
  const said = useMessages().holds;
  const t = useTranslations('holds');
  const { subject, subjectName, reason, sample, result, heldOn, by, plants, batches } = hold;
  return (
    <Card>
      <h2 className="text-xl">{t(`subjects.${subject}`, { name: subjectName ?? '' })}</h2>
      {reason && <p className="mt-1 text-lg font-semibold">{reason}</p>}
      <p className="text-ink-soft">{[t('since', { day: sayDay(heldOn) }), by && t('by', { name: by }), sample && t('sample', { sample }), result && t('result', { result })].filter(Boolean).join(', ')}</p>
      <p className="mt-3 font-semibold">{t('plants', { n: plants })}</p>
      <ul className="mt-1 flex flex-wrap gap-x-4 gap-y-2">
        {batches.map(({ id, label, balance, place }) => (
          <li key={id}><Tag href={pageOf(programme, 'batches', id)}>{label ?? said.noLabel}</Tag> {[balance, place?.name].filter(Boolean).join(', ')}</li>
        ))}
      </ul>
      {children}
    </Card>
  );
}
