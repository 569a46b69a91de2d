import { useMessages } from 'next-intl';
import { DayField } from '../../ui/form/day-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';

interface FillingFieldsProps {
  readonly prefix?: string;
  readonly fillingId: string;
  readonly today: string;
  /** A new tray need not be filled, and holds no plants yet. */
  readonly isNew?: boolean;
}

/** With what a tray is filled. Within a new tray the names stand under `filling/`. */
export function FillingFields({ prefix = '', fillingId, today, isNew = false }: FillingFieldsProps) {
  const { hints } = useMessages().places;
  return (
    <>
      <input type="hidden" name={`${prefix}id`} value={fillingId} />
      <TextField name={`${prefix}medium`} isOptional={isNew} hint={isNew ? hints.medium : hints.mediumAnew} />
      <TextField name={`${prefix}mediumLot`} isOptional hint={hints.mediumLot} />
      <DayField name={`${prefix}filledOn`} today={today} />
      <TextField name={`${prefix}howCleaned`} isOptional hint={hints.howCleaned} />
      {!isNew && <TickField name="plantsStayed" hint={hints.plantsStayed} />}
    </>
  );
}
