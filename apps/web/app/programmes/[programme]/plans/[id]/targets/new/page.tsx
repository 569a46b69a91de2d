import { Plan } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { targetChoices } from '../../../../../../../features/plan/target-choices.ts';
import { TargetFields } from '../../../../../../../features/plan/target-fields.tsx';
import { addTarget } from '../../../../../../../features/plan/write-plan.action.ts';
import { newId } from '../../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ plans }) => plans.addTargetTitle);

export default async function NewTargetPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [plan, choices, { plans: said }] = await Promise.all([read(apiOf(programme, 'plans', id), Plan), targetChoices(programme), getMessages()]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'plans'), words: said.title }, { href: pageOf(programme, 'plans', id), words: plan.name }]}
      title={said.addTargetTitle} lead={said.addTargetLead} action={addTarget.bind(null, programme, id)} labels={said.fields} send={said.workOut} newId={newId()}
    >
      <TargetFields {...choices} />
    </FormPage>
  );
}
