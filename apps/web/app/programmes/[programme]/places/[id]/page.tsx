import { Place } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { PlaceActs } from '../../../../../features/place/place-acts.tsx';
import { PlaceFacts } from '../../../../../features/place/place-facts.tsx';
import { pathTo } from '../../../../../lib/place-path.ts';
import { PlaceTree } from '../../../../../features/place/place-tree.tsx';
import { nameIn, partnersOf, placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ places }) => places.one);

export default async function PlacePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [place, places, partners, { isDesk }, { places: said, trace }] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), placesOf(programme), partnersOf(programme), workplaceOf(programme), getMessages(),
  ]);
  const path = pathTo(places, id);
  const here = path.at(-1);
  const within = places.filter((other) => other.id !== id && pathTo(places, other.id).some((step) => step.id === id));
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: said.title }, ...path.slice(0, -1).map((step) => ({ href: pageOf(programme, 'places', step.id), words: step.name }))]} />
      <PageHeading kind={said.kinds[place.kind]} act={<><PlaceActs programme={programme} place={place} isDesk={isDesk} /><ButtonLink look="quiet" href={`${pageOf(programme, 'trace')}?placeId=${id}`}>{trace.trace}</ButtonLink></>}>
        {place.name}
      </PageHeading>
      <div className="mb-12">
        <PlaceFacts place={place} here={here} partner={place.partnerId && nameIn(partners, place.partnerId)} />
      </div>
      {place.kind !== 'tray' && <Section heading={said.within}>{within.length === 0 ? <p className="text-ink-soft">{said.nothingWithin}</p> : <PlaceTree programme={programme} places={within} />}</Section>}
    </>
  );
}
