import { Plan } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { targetChoices } from '../../../../../../../features/plan/target-choices.ts';
import { TargetFields } from '../../../../../../../features/plan/target-fields.tsx';
import { changeTarget } from '../../../../../../../features/plan/write-plan.action.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ plans }) => plans.changeTarget);

export default async function ChangeTargetPage({ params }: { params: Promise<{ programme: string; id: string; targetId: string }> }) {
  const { programme, id, targetId } = await params;
  const [{ body: plan, etag }, choices, { plans: said }, t] = await Promise.all([readVersion(apiOf(programme, 'plans', id), Plan), targetChoices(programme), getMessages(), getTranslations('plans')]);
  const target = plan.targets.find((one) => one.id === targetId);
  if (!target) notFound();
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'plans'), words: said.title }, { href: pageOf(programme, 'plans', id), words: plan.name }]}
      title={t('changeTargetTitle', { stand: target.stand.name })} lead={said.changeTargetLead} action={changeTarget.bind(null, programme, id, targetId, etag)} labels={said.fields} send={said.workOut}
    >
      <TargetFields target={target} {...choices} />
    </FormPage>
  );
}
