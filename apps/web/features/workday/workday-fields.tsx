import type { Person, Workday } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Caution } from '../../ui/caution.tsx';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { DayField } from '../../ui/form/day-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { SeveralField } from '../../ui/form/several-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface WorkdayFieldsProps {
  readonly workday?: Workday;
  readonly places: readonly Choice[];
  readonly people: readonly Person[];
  readonly today: string;
}

export function WorkdayFields({ workday, places, people, today }: WorkdayFieldsProps) {
  const { hints, caution } = useMessages().workdays;
  return (
    <>
      <DayField name="day" today={today} value={workday?.day} isOpen />
      <ChoiceField name="placeId" isOptional value={workday?.placeId} choices={places} />
      <ProseField name="tasks" isOptional rows={2} value={workday?.tasks} />
      <SeveralField name="personIds" isOptional values={workday?.personIds ?? []} choices={choicesOf(people)} hint={hints.personIds} />
      <TextField name="others" keypad="numeric" isOptional value={workday?.others} hint={hints.others} />
      <TextField name="children" keypad="numeric" isOptional value={workday?.children} hint={hints.children} />
      <TextField name="hours" keypad="decimal" isOptional value={workday?.hours} hint={hints.hours} />
      <Caution>{caution}</Caution>
    </>
  );
}
