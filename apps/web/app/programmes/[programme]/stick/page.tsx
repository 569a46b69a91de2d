import { DonorTree, SecondOpinion, Trip, TripInList } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { SecondOpinionPart } from '../../../../features/second-opinion/second-opinion-part.tsx';
import { TrayForm } from '../../../../features/sticking/tray-form.tsx';
import { TripChooser } from '../../../../features/sticking/trip-chooser.tsx';
import { sayDay } from '../../../../lib/calendar.ts';
import { freeLabels } from '../../../../lib/free-labels.ts';
import { nameIn, placesOf, recipesOf, standsOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { placeChoices } from '../../../../lib/place-path.ts';
import { readIfAllowed } from '../../../../lib/read-if-allowed.ts';
import { read } from '../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Caution } from '../../../../ui/caution.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Trail } from '../../../../ui/trail.tsx';

interface StickPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ tripId?: string; stuck?: string; sent?: string; label?: string; trayId?: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('sticking'))('title') };
}

export default async function StickPage({ params, searchParams }: StickPageProps) {
  const { programme } = await params;
  const { tripId, stuck, sent, label, trayId } = await searchParams;
  const [stands, { sticking: said }, t] = await Promise.all([standsOf(programme), getMessages(), getTranslations('sticking')]);
  if (!tripId) {
    const trips = await read(`${apiOf(programme, 'trips')}?limit=20`, z.array(TripInList));
    return (
      <>
        <PageHeading lead={said.lead}>{said.title}</PageHeading>
        <TripChooser programme={programme} trips={trips.filter(({ cuttings }) => cuttings > 0)} stands={stands} label={label} />
      </>
    );
  }

  const trip = await read(apiOf(programme, 'trips', tripId), Trip);
  const [trees, recipes, places, labels, workplace] = await Promise.all([
    read(`${apiOf(programme, 'donor-trees')}?standId=${trip.standId}&limit=200`, z.array(DonorTree)), recipesOf(programme), placesOf(programme), freeLabels(programme, trip.bundles.length), workplaceOf(programme),
  ]);
  const trays = placeChoices(places, ({ kind }) => kind === 'tray' || kind === 'frame' || kind === 'ground');
  const tray = places.find(({ id, kind }) => id === trayId && kind === 'tray');
  const opinion = stuck ? await readIfAllowed(apiOf(programme, 'trips', tripId, 'second-opinion'), SecondOpinion) : undefined;
  const isAllStuck = trip.bundles.every((bundle) => bundle.stuck >= bundle.cuttings);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'stick'), words: said.title }, { href: pageOf(programme, 'trips', tripId), words: t('of', { stand: nameIn(stands, trip.standId), day: sayDay(trip.wentOn) }) }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <div className="grid gap-6">
        {stuck && (
          <div role="status" className="flex max-w-prose flex-wrap items-center gap-3 rounded-md border-2 border-juniper bg-lichen p-4 text-on-lichen">
            <p>✓ {isAllStuck ? said.allStuck : t('done', { n: Number(stuck) || 0 })}</p>
            <ButtonLink look="quiet" href={`${pageOf(programme, 'batches')}?standId=${trip.standId}&stage=cutting`}>{said.seeBatches}</ButtonLink>
            {tray && <ButtonLink look="quiet" href={`${pageOf(programme, 'places', tray.id)}?portrait=new#pictures`}>{t('portrait', { tray: tray.name })}</ButtonLink>}
          </div>
        )}
        {opinion && <SecondOpinionPart opinion={opinion.body} isFolded={!isAllStuck} />}
        <Caution>{said.caution}</Caution>
        {trays.length === 0 ? (
          <Empty act={<ButtonLink href={pageOf(programme, 'places', 'new')}>{said.addTray}</ButtonLink>}>{said.noTray}</Empty>
        ) : (
          // A new form for the next tray, and the same one for a tray that came back with a refusal: without script React knows it by this key.
          <TrayForm key={sent ?? 'first'} programme={programme} trip={trip} trees={trees} recipes={recipes} trays={trays} labels={label ? [label, ...labels] : labels} workplace={workplace} />
        )}
      </div>
    </>
  );
}
