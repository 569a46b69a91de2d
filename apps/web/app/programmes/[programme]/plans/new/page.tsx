import { getMessages } from 'next-intl/server';
import { PlanFields } from '../../../../../features/plan/plan-fields.tsx';
import { addPlan } from '../../../../../features/plan/write-plan.action.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ plans }) => plans.addTitle);

export default async function NewPlanPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ today, seasonStartsIn }, { plans: said }] = await Promise.all([workplaceOf(programme), getMessages()]);
  // The next season that begins.
  const season = Number(today.slice(0, 4)) + (Number(today.slice(5, 7)) >= seasonStartsIn ? 1 : 0);
  return (
    <FormPage trail={[{ href: pageOf(programme, 'plans'), words: said.title }]} title={said.addTitle} lead={said.addLead} action={addPlan.bind(null, programme)} labels={said.fields} send={said.save} newId={newId()}>
      <PlanFields season={season} />
    </FormPage>
  );
}
