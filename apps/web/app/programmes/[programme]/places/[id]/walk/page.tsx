import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { WalkForm } from '../../../../../../features/place/walk-form.tsx';
import { placesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ places }) => places.putInOrder);

/** What lies side by side in one place. */
export default async function WalkWithinPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [places, { places: said }, t] = await Promise.all([placesOf(programme), getMessages(), getTranslations('places')]);
  const within = places.filter(({ parentId }) => parentId === id);
  const place = places.find((one) => one.id === id);
  if (!place || within.length === 0) notFound();
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: said.title }, { href: pageOf(programme, 'places', id), words: place.name }]} />
      <PageHeading lead={said.walkLead}>{t('walkTitle', { name: place.name })}</PageHeading>
      <WalkForm programme={programme} parentId={id} places={within} />
    </>
  );
}
