import { DonorTree } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { stateClone } from '../../../../../../features/origin/state-clone.action.ts';
import { newId } from '../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { ChoiceField } from '../../../../../../ui/form/choice-field.tsx';
import { choicesFrom } from '../../../../../../ui/form/choices.ts';
import { DayField } from '../../../../../../ui/form/day-field.tsx';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';
import { RadioField } from '../../../../../../ui/form/radio-field.tsx';
import { TextField } from '../../../../../../ui/form/text-field.tsx';

export const generateMetadata = titled(({ origins }) => origins.clones.heading);

export default async function ClonePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const tree = await read(apiOf(programme, 'donor-trees', id), DonorTree);
  const [near, { today }, { origins: { clones: said }, donorTrees }, t] = await Promise.all([
    read(`${apiOf(programme, 'donor-trees')}?standId=${tree.standId}&taxonId=${tree.taxonId}&limit=200`, z.array(DonorTree)), workplaceOf(programme), getMessages(), getTranslations('origins.clones'),
  ]);
  const others = near.filter((other) => other.id !== id).map((other) => ({ value: other.id, words: other.label }));
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'donor-trees'), words: donorTrees.title }, { href: pageOf(programme, 'donor-trees', id), words: tree.label }]}
      title={t('title', { tree: tree.label })}
      lead={said.takeBack}
      action={stateClone.bind(null, programme, id)}
      labels={said.fields}
      send={said.send}
      newId={newId()}
    >
      <ChoiceField name="otherTreeId" choices={others} hint={others.length === 0 ? said.noOther : said.hints.otherTreeId} />
      <RadioField name="isSame" choices={choicesFrom(said.choices)} />
      <TextField name="evidence" hint={said.hints.evidence} />
      <DayField name="saidOn" today={today} />
    </FormPage>
  );
}
