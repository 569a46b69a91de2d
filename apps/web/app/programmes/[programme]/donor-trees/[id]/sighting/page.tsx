import { DonorTree } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { writeSighting } from '../../../../../../features/origin/write-sighting.action.ts';
import { newId } from '../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { choicesFrom } from '../../../../../../ui/form/choices.ts';
import { DayField } from '../../../../../../ui/form/day-field.tsx';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';
import { ProseField } from '../../../../../../ui/form/prose-field.tsx';
import { RadioField } from '../../../../../../ui/form/radio-field.tsx';

export const generateMetadata = titled(({ origins }) => origins.sightings.heading);

export default async function SightingPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [tree, { today }, { origins: { sightings: said }, donorTrees }, t] = await Promise.all([read(apiOf(programme, 'donor-trees', id), DonorTree), workplaceOf(programme), getMessages(), getTranslations('origins.sightings')]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'donor-trees'), words: donorTrees.title }, { href: pageOf(programme, 'donor-trees', id), words: tree.label }]}
      title={t('title', { tree: tree.label })}
      action={writeSighting.bind(null, programme, id)}
      labels={said.fields}
      send={said.send}
      newId={newId()}
    >
      <RadioField name="state" choices={choicesFrom(donorTrees.state)} hint={said.hints.state} />
      <DayField name="seenOn" today={today} />
      <ProseField name="note" isOptional hint={said.hints.note} />
    </FormPage>
  );
}
