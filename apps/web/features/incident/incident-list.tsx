import type { IncidentShown } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

interface IncidentListProps {
  readonly programme: string;
  readonly placeId: string;
  /** The newest first. */
  readonly incidents: readonly IncidentShown[];
}

/** What went wrong at a place, what is still so first. */
export function IncidentList({ programme, placeId, incidents }: IncidentListProps) {
  const { incidents: said, entries } = useMessages();
  const t = useTranslations('incidents');
  const days = ({ from, until, endSeen }: IncidentShown) => {
    if (until === null) return t('from', { from: sayDay(from) });
    return t(endSeen ? 'fromSeen' : 'fromTo', { from: sayDay(from), until: sayDay(until) });
  };
  const ordered = incidents.toSorted((one, other) => Number(one.until !== null) - Number(other.until !== null));
  return (
    <div id="incidents">
      <Section heading={said.title} lead={said.lead}>
        {ordered.length === 0 && <p className="text-ink-soft">{said.none}</p>}
        <ul className="grid max-w-3xl gap-3">
          {ordered.map((incident) => (
            <li key={incident.entryId} className={`border-l-4 pl-3 ${incident.until === null ? 'border-rust' : 'border-line-strong'}`}>
              <p><Flag tone={incident.until === null ? 'grave' : 'plain'}>{entries.incidents[incident.what]}</Flag> {entries.severities[incident.severity]}, {days(incident)}{incident.placeId !== placeId && `, ${incident.placeName}`}</p>
              {incident.detail && <p className="max-w-prose italic">“{incident.detail}”</p>}
              <p className="flex flex-wrap items-center gap-x-4 text-sm text-ink-soft">
                {incident.writtenBy && <span>{t('by', { name: incident.writtenBy })}</span>}
                {incident.mayMend && <span className="not-on-paper"><RowLink href={pageOf(programme, 'places', placeId, 'incidents', incident.entryId)}>{incident.until === null ? said.more : said.mendOne}</RowLink></span>}
              </p>
            </li>
          ))}
        </ul>
        <p className="not-on-paper mt-4"><ButtonLink look="quiet" href={pageOf(programme, 'places', placeId, 'incidents', 'new')}>{said.add}</ButtonLink></p>
      </Section>
    </div>
  );
}
