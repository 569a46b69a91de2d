import type { ExposureShown, StayShown } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { useRegimeWords } from '../../ui/regime-words.tsx';
import { Section } from '../../ui/section.tsx';
import { IncidentThere, TreatmentThere } from './around-entry.tsx';

/** Where the batch stood, and what went wrong or was done there meanwhile. */
export function Stays({ stays }: { stays: readonly StayShown[] }) {
  const said = useMessages().batches;
  if (stays.length === 0) return null;
  return (
    <Section heading={said.stays}>
      <ol className="grid max-w-2xl gap-2">
        {stays.map(({ place, from, until, incidents, treatments }) => (
          <li key={`${from}-${place?.id}`} className="border-l-4 border-lichen-deep pl-3">
            <strong>{place?.name ?? said.unknown}</strong> <Days from={from} until={until} />
            {incidents.map((incident) => <p key={incident.entryId}><IncidentThere incident={incident} /></p>)}
            {treatments.map((treatment) => <p key={treatment.entryId}><TreatmentThere treatment={treatment} /></p>)}
          </li>
        ))}
      </ol>
    </Section>
  );
}

/** What light, heat, air and cover it had, read from where it stood when. */
export function Exposure({ exposure }: { exposure: readonly ExposureShown[] }) {
  const said = useMessages().batches;
  const words = useRegimeWords();
  if (exposure.every(({ regime }) => regime === null)) return null;
  return (
    <Section heading={said.exposure} lead={said.exposureLead}>
      <ol className="grid max-w-2xl gap-2">
        {exposure.map(({ from, until, regime }) => (
          <li key={from} className="border-l-4 border-lichen-deep pl-3">
            <strong>{regime ? words(regime) : said.exposureUnknown}</strong>
            <span className="block"><Days from={from} until={until} />{regime && <span className="text-ink-soft">, {regime.placeName}</span>}</span>
          </li>
        ))}
      </ol>
    </Section>
  );
}

function Days({ from, until }: { from: string; until: string | null }) {
  const t = useTranslations('batches');
  return <span className="text-ink-soft">{t('line.since', { day: sayDay(from) })}{until && `, ${t('until', { day: sayDay(until) })}`}</span>;
}
