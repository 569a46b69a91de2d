import { getMessages } from 'next-intl/server';
import { WalkForm } from '../../../../../features/place/walk-form.tsx';
import { placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ places }) => places.putInOrder);

/** The outermost places: houses, open ground, sites. */
export default async function WalkPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [places, { places: said }] = await Promise.all([placesOf(programme), getMessages()]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: said.title }]} />
      <PageHeading lead={said.walkLead}>{said.walkTitleAll}</PageHeading>
      <WalkForm programme={programme} parentId={null} places={places.filter(({ parentId }) => parentId === null)} />
    </>
  );
}
