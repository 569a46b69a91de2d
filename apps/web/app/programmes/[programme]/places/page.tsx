import { getMessages } from 'next-intl/server';
import { PlaceTree } from '../../../../features/place/place-tree.tsx';
import { placesOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

export const generateMetadata = titled(({ places }) => places.title);

export default async function PlacesPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk }, places, { places: said }] = await Promise.all([workplaceOf(programme), placesOf(programme), getMessages()]);
  const add = isDesk && <ButtonLink look={places.length > 0 ? 'quiet' : 'main'} href={pageOf(programme, 'places', 'new')}>{said.add}</ButtonLink>;
  return (
    <>
      <PageHeading lead={said.lead} act={places.length > 0 && <>{add}{isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'places', 'walk')}>{said.putInOrder}</ButtonLink>}</>}>{said.title}</PageHeading>
      {places.length === 0 ? <Empty act={add}>{said.empty}</Empty> : <PlaceTree programme={programme} places={places} />}
    </>
  );
}
