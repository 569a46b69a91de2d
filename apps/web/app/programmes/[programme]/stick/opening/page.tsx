import { DonorTree } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { bringIn } from '../../../../../features/sticking/bring-in.action.ts';
import { OpeningFields } from '../../../../../features/sticking/opening-fields.tsx';
import { freeLabels } from '../../../../../lib/free-labels.ts';
import { peopleOf, placesOf, taxaOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { placeChoices } from '../../../../../lib/place-path.ts';
import { read } from '../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { Caution } from '../../../../../ui/caution.tsx';
import { EntryForm } from '../../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export default async function OpeningPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [trees, taxa, places, people, [label], workplace, { sticking: { opening: said }, batches }] = await Promise.all([
    read(`${apiOf(programme, 'donor-trees')}?limit=200`, z.array(DonorTree)), taxaOf(programme), placesOf(programme), peopleOf(programme), freeLabels(programme, 1), workplaceOf(programme), getMessages(),
  ]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: batches.title }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <div className="grid gap-6">
        <Caution>{said.caution}</Caution>
        <EntryForm action={bringIn.bind(null, programme)} fields={said.fields} more={{ cameFrom: said.cameFrom, ...Object.fromEntries(trees.map((tree) => [`candidates/${tree.id}`, tree.label])) }} send={said.send} today={workplace.today} zone={workplace.zone} people={people.filter(({ id }) => id !== workplace.me.personId)}>
          <OpeningFields trees={trees} taxa={taxa} places={placeChoices(places)} label={label} />
        </EntryForm>
      </div>
    </>
  );
}
