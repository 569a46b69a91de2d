import { BatchInList, IncidentShown, Place, Regimes } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { BatchTable } from '../../../../../features/batch/batch-table.tsx';
import { IncidentList } from '../../../../../features/incident/incident-list.tsx';
import { FillingsSection } from '../../../../../features/place/fillings-section.tsx';
import { PlaceActs } from '../../../../../features/place/place-acts.tsx';
import { PlaceFacts } from '../../../../../features/place/place-facts.tsx';
import { PlaceTree } from '../../../../../features/place/place-tree.tsx';
import { RowMapSection } from '../../../../../features/place/row-map-section.tsx';
import { PhotoSection } from '../../../../../features/photo/photo-section.tsx';
import { RegimeSection } from '../../../../../features/regime/regime-section.tsx';
import { nameIn, partnersOf, placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { isAtSite, pathTo } from '../../../../../lib/place-path.ts';
import { read } from '../../../../../lib/read.ts';
import { trayNow } from '../../../../../lib/tray-now.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

/** So many batches are listed on the page of their place; the list of batches has them all. */
const LISTED = 200;

export const generateMetadata = titled(({ places }) => places.one);

interface PlacePageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ photos?: string; takeDown?: string; portrait?: string }>;
}

export default async function PlacePage({ params, searchParams }: PlacePageProps) {
  const [{ programme, id }, asked] = await Promise.all([params, searchParams]);
  const [place, places, partners, { isDesk, today }, { places: said, trace }] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), placesOf(programme), partnersOf(programme), workplaceOf(programme), getMessages(),
  ]);
  const tray = await trayNow(programme, place);
  const path = pathTo(places, id);
  const here = path.at(-1);
  const within = places.filter((other) => other.id !== id && pathTo(places, other.id).some((step) => step.id === id));
  const neighbours = within.filter(({ parentId }) => parentId === id).length;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'places'), words: said.title }, ...path.slice(0, -1).map((step) => ({ href: pageOf(programme, 'places', step.id), words: step.name }))]} />
      <PageHeading kind={said.kinds[place.kind]} act={<><PlaceActs programme={programme} place={place} isDesk={isDesk} /><ButtonLink look="quiet" href={`${pageOf(programme, 'trace')}?placeId=${id}`}>{trace.trace}</ButtonLink></>}>
        {place.name}
      </PageHeading>
      <div className="mb-12">
        <PlaceFacts place={place} here={here} partner={place.partnerId && nameIn(partners, place.partnerId)} />
      </div>
      {tray && <RowMapSection programme={programme} place={place} tray={tray} />}
      {here && here.batches > 0 && <BatchesHere programme={programme} placeId={id} batches={here.batches} />}
      {place.kind !== 'tray' && (
        <Section heading={said.within}>
          {within.length === 0 ? <p className="text-ink-soft">{said.nothingWithin}</p> : <PlaceTree programme={programme} places={within} />}
          {isDesk && neighbours > 1 && <p className="not-on-paper mt-4"><ButtonLink look="quiet" href={pageOf(programme, 'places', id, 'walk')}>{said.putInOrder}</ButtonLink></p>}
        </Section>
      )}
      <PhotoSection programme={programme} subject={{ noun: 'places', id }} of={place.name} isDesk={isDesk} today={today} isTray={place.kind === 'tray'} asked={asked} />
      {!isAtSite(place) && <KeptAndWrong programme={programme} placeId={id} isDesk={isDesk} />}
      {place.kind === 'tray' && <FillingsSection fillings={place.fillings} />}
    </>
  );
}

/** Batches with plants that stand right here, not in a place within. */
async function BatchesHere({ programme, placeId, batches }: { programme: string; placeId: string; batches: number }) {
  const asked = new URLSearchParams({ placeId, state: 'alive', limit: String(LISTED) });
  const [listed, { places: said }, t] = await Promise.all([read(`${apiOf(programme, 'batches')}?${asked}`, z.array(BatchInList)), getMessages(), getTranslations('places')]);
  const here = listed.filter(({ place }) => place?.id === placeId);
  const more = batches - here.length;
  return (
    <Section heading={said.batches}>
      {here.length > 0 && <BatchTable programme={programme} batches={here} isForPartner={false} />}
      {more > 0 && <p className="mt-3">{t('moreBatches', { n: more })}</p>}
      <p className="not-on-paper mt-4"><ButtonLink look="quiet" href={`${pageOf(programme, 'batches')}?placeId=${placeId}`}>{said.allBatches}</ButtonLink></p>
    </Section>
  );
}

/** How it is kept, and what went wrong: of the place itself, or told of one around it. */
async function KeptAndWrong({ programme, placeId, isDesk }: { programme: string; placeId: string; isDesk: boolean }) {
  const [regimes, incidents] = await Promise.all([
    read(apiOf(programme, 'places', placeId, 'regimes'), Regimes), read(`${apiOf(programme, 'incidents')}?placeId=${placeId}`, z.array(IncidentShown)),
  ]);
  return (
    <>
      <RegimeSection programme={programme} placeId={placeId} regimes={regimes} isDesk={isDesk} />
      <IncidentList programme={programme} placeId={placeId} incidents={incidents} />
    </>
  );
}
