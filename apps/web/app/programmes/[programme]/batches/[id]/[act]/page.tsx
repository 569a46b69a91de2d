import { Batch } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { actChoices } from '../../../../../../features/batch/act-choices.ts';
import { ActFields, NO_CHOICES } from '../../../../../../features/batch/act-fields.tsx';
import { isAct } from '../../../../../../features/batch/acts.ts';
import { deadLabels } from '../../../../../../features/batch/dead-lines.tsx';
import { labelOf } from '../../../../../../features/batch/line-nodes.ts';
import { partnersAct } from '../../../../../../features/batch/partners-act.ts';
import { WhatItIs } from '../../../../../../features/batch/what-it-is.tsx';
import { writeAct } from '../../../../../../features/batch/write-act.action.ts';
import { peopleOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { workdayChoices } from '../../../../../../lib/workday-choices.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { Caution } from '../../../../../../ui/caution.tsx';
import { EntryForm } from '../../../../../../ui/ledger/entry-form.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

interface ActPageProps {
  readonly params: Promise<{ programme: string; id: string; act: string }>;
}

export async function generateMetadata({ params }: ActPageProps): Promise<Metadata> {
  const { act } = await params;
  return { title: isAct(act) ? (await getTranslations('batches'))(`acts.${act}`) : undefined };
}

export default async function ActPage({ params }: ActPageProps) {
  const { programme, id, act } = await params;
  if (!isAct(act)) notFound();
  const [batch, workplace, { batches: said }, t] = await Promise.all([
    read(apiOf(programme, 'batches', id), Batch), workplaceOf(programme), getMessages(), getTranslations('batches'),
  ]);
  const isPartner = workplace.role === 'partner';
  if (isPartner && act !== partnersAct(batch)) notFound();
  // Partners tell what they saw themselves, of one batch.
  const [choices, workdays, people] = isPartner ? [NO_CHOICES, undefined, []]
    : await Promise.all([actChoices(programme, batch, act), workdayChoices(programme, workplace.today), peopleOf(programme)]);
  const cautions: Readonly<Partial<Record<string, string>>> = said.cautions;
  const label = labelOf(batch);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: said.title }, { href: pageOf(programme, 'batches', id), words: label }]} />
      <PageHeading lead={said.leads[act]}>{t(`titles.${act}`, { label })}</PageHeading>
      <div className="grid gap-6">
        <WhatItIs batch={batch} />
        {cautions[act] && <Caution>{cautions[act]}</Caution>}
        <EntryForm
          action={writeAct.bind(null, programme, id, act)}
          fields={{ ...said.fields, ...deadLabels(said.deadN, said.deadCause) }}
          send={said.sends[act]}
          today={workplace.today}
          zone={workplace.zone}
          {...(workdays && { workdays })}
          people={people.filter((person) => person.id !== workplace.me.personId)}
        >
          <ActFields act={act} choices={choices} isCutting={batch.stage === 'cutting'} />
        </EntryForm>
      </div>
    </>
  );
}
