import type { Partner } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { DateField } from '../../ui/form/date-field.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export function PartnerFields({ partner, today }: { partner?: Partner; today: string }) {
  const { hints } = useMessages().partners;
  return (
    <>
      <TextField name="name" value={partner?.name} />
      <DayField name="since" today={today} value={partner?.since} isOpen />
      <DateField name="until" isOptional value={partner?.until} hint={hints.until} />
    </>
  );
}
