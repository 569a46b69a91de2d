import { useMessages } from 'next-intl';
import { DayField } from '../../ui/form/day-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

/** With what a tray is filled. Within a new tray the names stand under `filling/`. */
export function FillingFields({ prefix = '', fillingId, today, isOptional = false }: { prefix?: string; fillingId: string; today: string; isOptional?: boolean }) {
  const { hints } = useMessages().places;
  return (
    <>
      <input type="hidden" name={`${prefix}id`} value={fillingId} />
      <TextField name={`${prefix}medium`} isOptional={isOptional} hint={hints.medium} />
      <DayField name={`${prefix}filledOn`} today={today} />
      <TextField name={`${prefix}howCleaned`} isOptional hint={hints.howCleaned} />
    </>
  );
}
