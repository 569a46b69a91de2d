import { Plan } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { PlanFields } from '../../../../../../features/plan/plan-fields.tsx';
import { changePlan } from '../../../../../../features/plan/write-plan.action.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ plans }) => plans.change);

export default async function ChangePlanPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: plan, etag }, { plans: said }, t] = await Promise.all([readVersion(apiOf(programme, 'plans', id), Plan), getMessages(), getTranslations('plans')]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'plans'), words: said.title }, { href: pageOf(programme, 'plans', id), words: plan.name }]}
      title={t('changeTitle', { name: plan.name })} action={changePlan.bind(null, programme, id, etag)} labels={said.fields} send={said.save}
    >
      <PlanFields plan={plan} season={plan.season} />
    </FormPage>
  );
}
