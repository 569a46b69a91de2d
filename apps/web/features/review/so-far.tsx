import type { ReviewItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayMoment } from '../../lib/calendar.ts';

/** What was asked and assigned so far; the doubt stays on the list meanwhile. */
export function SoFar({ decisions, zone }: { decisions: ReviewItem['decisions']; zone: string }) {
  const said = useMessages().review;
  const t = useTranslations('review');
  if (decisions.length === 0) return null;
  return (
    <ul className="text-sm">
      {decisions.map(({ decision, by, at, note, assignedTo, askedOf }) => (
        <li key={`${at} ${decision}`}>
          {t('soFar', { decision: said.decisions[decision], name: by, moment: sayMoment(at, zone) })} {(assignedTo ?? askedOf) && t('to', { name: assignedTo ?? askedOf ?? '' })} {note && <i>“{note}”</i>}
        </li>
      ))}
    </ul>
  );
}
