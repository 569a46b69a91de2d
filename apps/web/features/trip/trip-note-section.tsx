import { TripNote } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { pageOf } from '../../lib/page-address.ts';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Section } from '../../ui/section.tsx';

/** The note, for those with the right to see exact places. */
export async function TripNoteSection({ programme, tripId, isDesk }: { programme: string; tripId: string; isDesk: boolean }) {
  const note = (await readIfAllowed(apiOf(programme, 'trips', tripId, 'note'), TripNote))?.body.note;
  if (note === undefined && !isDesk) return null;
  const { trips: said } = await getMessages();
  return (
    <Section heading={said.note} lead={said.noteLead} isOffPaper>
      {note && <p className="mb-4 max-w-prose whitespace-pre-line">{note}</p>}
      {isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'trips', tripId, 'note')}>{note ? said.changeNote : said.writeNote}</ButtonLink>}
    </Section>
  );
}
