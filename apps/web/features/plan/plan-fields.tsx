import type { Plan } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export function PlanFields({ plan, season }: { plan?: Plan; season: number }) {
  const { plans: { hints } } = useMessages();
  return (
    <>
      <TextField name="name" value={plan?.name} hint={hints.name} />
      <TextField name="season" keypad="numeric" value={plan?.season ?? season} hint={hints.season} />
      <ProseField name="note" isOptional value={plan?.note} hint={hints.note} />
    </>
  );
}
