import { DonorTree, LastCut, Trip } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { AddBundleForm } from '../../../../../features/trip/add-bundle-form.tsx';
import { BundleTable } from '../../../../../features/trip/bundle-table.tsx';
import { TripFacts } from '../../../../../features/trip/trip-facts.tsx';
import { TripNoteSection } from '../../../../../features/trip/trip-note-section.tsx';
import { TripWarnings } from '../../../../../features/trip/trip-warnings.tsx';
import { sayDay } from '../../../../../lib/calendar.ts';
import { nameIn, standsOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Empty } from '../../../../../ui/empty.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ trips }) => trips.kind);

export default async function TripPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const trip = await read(apiOf(programme, 'trips', id), Trip);
  const [cuts, trees, stands, { isDesk }, { trips: said, trace }, t] = await Promise.all([
    read(`${apiOf(programme, 'trips', 'last-cuts')}?standId=${trip.standId}&on=${trip.wentOn}`, z.array(LastCut)),
    read(`${apiOf(programme, 'donor-trees')}?standId=${trip.standId}&limit=200`, z.array(DonorTree)), standsOf(programme), workplaceOf(programme), getMessages(), getTranslations('trips'),
  ]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'trips'), words: said.title }]} />
      <PageHeading
        kind={said.kind}
        act={
          <>
            {trip.bundles.length > 0 && <ButtonLink href={`${pageOf(programme, 'stick')}?tripId=${id}`}>{said.stick}</ButtonLink>}
            {trip.bundles.length > 0 && <ButtonLink look="quiet" href={pageOf(programme, 'trips', id, 'cards')}>{said.cards}</ButtonLink>}
            {trip.bundles.length > 0 && <ButtonLink look="quiet" href={`${pageOf(programme, 'trace')}?tripId=${id}`}>{trace.trace}</ButtonLink>}
            {isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'trips', id, 'edit')}>{said.change}</ButtonLink>}
          </>
        }
      >
        {t('name', { stand: nameIn(stands, trip.standId), day: sayDay(trip.wentOn) })}
      </PageHeading>
      <TripWarnings warnings={trip.warnings} trees={trees} />
      <div className="mb-12"><TripFacts programme={programme} trip={trip} /></div>
      <Section heading={said.bundles}>
        {trip.bundles.length === 0 ? <Empty>{said.noBundles}</Empty> : <BundleTable programme={programme} bundles={trip.bundles} trees={trees} />}
      </Section>
      <Section heading={said.addBundleTitle}>
        {trees.length === 0 ? (
          <Empty act={<ButtonLink href={`${pageOf(programme, 'donor-trees', 'new')}?standId=${trip.standId}`}>{said.addTree}</ButtonLink>}>{said.noTrees}</Empty>
        ) : (
          <AddBundleForm programme={programme} tripId={id} bundleId={newId()} trees={trees} cuts={cuts} />
        )}
      </Section>
      <TripNoteSection programme={programme} tripId={id} isDesk={isDesk} />
    </>
  );
}
