import { DonorTree, HoldShown, TripInList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { HoldCard } from '../../../../features/hold/hold-card.tsx';
import { HoldFields } from '../../../../features/hold/hold-fields.tsx';
import { heldOtherwise, releaseOf } from '../../../../features/hold/hold-subject.ts';
import { writeHold, writeRelease } from '../../../../features/hold/write-hold.action.ts';
import { sayDay } from '../../../../lib/calendar.ts';
import { nameIn, placesOf, standsOf } from '../../../../lib/lists.ts';
import { placeChoices } from '../../../../lib/place-path.ts';
import { read } from '../../../../lib/read.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Caution } from '../../../../ui/caution.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { EntryForm } from '../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Section } from '../../../../ui/section.tsx';

export const generateMetadata = titled(({ holds }) => holds.title);

interface HoldsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ release?: string }>;
}

export default async function HoldsPage({ params, searchParams }: HoldsPageProps) {
  const [{ programme }, { release }] = await Promise.all([params, searchParams]);
  const [holds, workplace, places, stands, trees, trips, { holds: said }] = await Promise.all([
    read(apiOf(programme, 'holds'), z.array(HoldShown)), workplaceOf(programme), placesOf(programme), standsOf(programme), read(`${apiOf(programme, 'donor-trees')}?limit=200`, z.array(DonorTree)),
    read(`${apiOf(programme, 'trips')}?limit=50`, z.array(TripInList)), getMessages(),
  ]);
  const t = await getTranslations('holds');
  const around = { fields: said.fields, today: workplace.today, zone: workplace.zone, people: [] };
  const choices = {
    places: placeChoices(places), trees: trees.map(({ id, label }) => ({ value: id, words: label })),
    trips: trips.map(({ id, standId, wentOn }) => ({ value: id, words: `${nameIn(stands, standId)}, ${sayDay(wentOn)}` })),
  };
  const released = holds.find(({ entryId }) => entryId === release);
  const staying = released ? heldOtherwise(released, holds) : 0;
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <div className="mb-8"><Caution>{said.caution}</Caution></div>
      {holds.length === 0 && <div className="mb-12"><Empty>{said.empty}</Empty></div>}
      <ul className="mb-12 grid gap-4">
        {holds.map((hold) => (
          <li key={hold.entryId} id={hold.entryId}>
            <HoldCard programme={programme} hold={hold}>
              {workplace.isDesk && hold !== released && <p className="not-on-paper mt-4"><ButtonLink look="quiet" href={`?release=${hold.entryId}#${hold.entryId}`}>{said.release}</ButtonLink></p>}
              {workplace.isDesk && hold === released && (
                <div className="not-on-paper mt-6 border-t border-line pt-4">
                  {staying > 0 && <p className="mb-4">{t('heldOtherwise', { n: staying })}</p>}
                  <EntryForm {...around} action={writeRelease.bind(null, programme, releaseOf(hold))} send={said.releaseSend}><HoldFields /></EntryForm>
                </div>
              )}
            </HoldCard>
          </li>
        ))}
      </ul>
      {!released && (
        <div className="not-on-paper">
          <Section heading={said.hold} lead={said.holdLead}>
            <EntryForm {...around} action={writeHold.bind(null, programme)} send={said.holdSend}><HoldFields choices={choices} /></EntryForm>
          </Section>
        </div>
      )}
    </>
  );
}
