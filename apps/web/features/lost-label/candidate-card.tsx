import type { LabelCandidate } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Flag } from '../../ui/flag.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Way } from '../../ui/way.tsx';
import type { Route } from 'next';

/** One batch that the plant may be of: what it is, what speaks for it and against it, and what to do if it is this one. */
export function CandidateCard({ programme, candidate }: { programme: string; candidate: LabelCandidate }) {
  const { lostLabel: said } = useMessages();
  const t = useTranslations('lostLabel');
  const { id, label, stage, donorTree, stand, taxon, place, rows, balance, missing, signs, stuckOn, lastSeenOn } = candidate;
  const name = label ?? `…${id.slice(-6)}`;
  const days = [stuckOn && t('stuckOn', { day: sayDay(stuckOn) }), lastSeenOn && t('seenOn', { day: sayDay(lastSeenOn) })];
  return (
    <article aria-label={name} className="card grid gap-3 rounded-lg border border-line bg-sheet px-4 py-3 break-inside-avoid">
      <p className="flex flex-wrap items-center gap-x-4 gap-y-1">
        <Way href={pageOf(programme, 'batches', id) as Route} className="tie-label text-lg">{name}</Way>
        <StageMark stage={stage} />
        <strong className="tabular-nums">{t('here', { n: balance })}</strong>
        {missing > 0 && <Flag tone="look">{t('missing', { n: missing })}</Flag>}
      </p>
      <p className="text-sm">
        <strong>{[donorTree?.label ?? stand?.name, taxon?.name].filter(Boolean).join(', ')}</strong>
        <span className="block text-ink-soft">{[place?.name, rows && t('rows', { rows }), ...days].filter(Boolean).join(' · ')}</span>
        {signs.length > 1 || (signs.length === 1 && missing === 0) ? <span className="block text-ink-soft">{signs.filter((sign) => sign !== 'missing').map((sign) => said.signs[sign]).join(' · ')}</span> : null}
      </p>
      <p className="not-on-paper flex flex-wrap gap-3">
        <ButtonLink look="quiet" href={pageOf(programme, 'batches', id, 'relabel')}>{said.relabel}</ButtonLink>
        {stage !== 'planted' && missing > 0 && <ButtonLink look="quiet" href={pageOf(programme, 'batches', id, 'find')}>{said.found}</ButtonLink>}
      </p>
    </article>
  );
}
