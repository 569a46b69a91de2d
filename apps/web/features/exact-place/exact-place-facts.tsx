import { ExactPlace } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { pageOf } from '../../lib/page-address.ts';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Section } from '../../ui/section.tsx';

interface ExactPlaceFactsProps {
  readonly programme: string;
  readonly noun: 'stands' | 'donor-trees';
  readonly id: string;
  readonly isDesk: boolean;
}

/** The position as measured, for those with the right to see it; for others nothing, not even that there is one. */
export async function ExactPlaceFacts({ programme, noun, id, isDesk }: ExactPlaceFactsProps) {
  const place = (await readIfAllowed(apiOf(programme, noun, id, 'exact-place'), ExactPlace))?.body;
  if (!place && !isDesk) return null;

  const { exactPlace: said } = await getMessages();
  const way = isDesk && <div className="mt-4"><ButtonLink look="quiet" href={pageOf(programme, noun, id, 'exact-place')}>{place ? said.change : said.tell}</ButtonLink></div>;
  if (!place) return <Section heading={said.title} lead={said.notTold} isOffPaper>{way}</Section>;
  return (
    <Section heading={said.title} lead={said.lead} isOffPaper>
      <Facts
        facts={[
          { term: said.fields.latitude, says: `${place.latitude}°` },
          { term: said.fields.longitude, says: `${place.longitude}°` },
          { term: said.fields.uncertaintyM, says: place.uncertaintyM && `${place.uncertaintyM} m` },
          { term: said.fields.elevationM, says: place.elevationM === null ? undefined : `${place.elevationM} m` },
          { term: said.fields.directions, says: place.directions },
        ]}
      />
      {way}
    </Section>
  );
}
