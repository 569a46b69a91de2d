import { Batch } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { deadLabels } from '../../../../../../features/batch/dead-lines.tsx';
import { labelOf } from '../../../../../../features/batch/line-nodes.ts';
import { SortFields } from '../../../../../../features/batch/sort-fields.tsx';
import { sortTray } from '../../../../../../features/batch/sort-tray.action.ts';
import { WhatItIs } from '../../../../../../features/batch/what-it-is.tsx';
import { freeLabels } from '../../../../../../lib/free-labels.ts';
import { peopleOf, placesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { isInNursery, placeChoices } from '../../../../../../lib/place-path.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { Caution } from '../../../../../../ui/caution.tsx';
import { EntryForm } from '../../../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ sorting }) => sorting.act);

export default async function SortPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [batch, workplace, people, places, labels, { batches, sorting: said }, t] = await Promise.all([
    read(apiOf(programme, 'batches', id), Batch), workplaceOf(programme), peopleOf(programme), placesOf(programme), freeLabels(programme, 2), getMessages(), getTranslations('sorting'),
  ]);
  if (batch.stage === 'potted' || batch.stage === 'planted') notFound();
  const label = labelOf(batch);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: batches.title }, { href: pageOf(programme, 'batches', id), words: label }]} />
      <PageHeading lead={said.lead}>{t('title', { label })}</PageHeading>
      <div className="grid gap-6">
        <WhatItIs batch={batch} />
        <Caution>{batches.cautions.lift} {batches.cautions.pot}</Caution>
        <EntryForm
          action={sortTray.bind(null, programme, id)}
          fields={{ ...said.fields, ...deadLabels(batches.deadN, batches.deadCause) }}
          more={{ time: said.fields.time }}
          send={said.send}
          today={workplace.today}
          zone={workplace.zone}
          people={people.filter((person) => person.id !== workplace.me.personId)}
        >
          <SortFields isCutting={batch.stage === 'cutting'} inBooks={batch.balance} places={placeChoices(places, isInNursery)} labels={labels} />
        </EntryForm>
      </div>
    </>
  );
}
