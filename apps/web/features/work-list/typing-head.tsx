'use client';

import type { WorkListKind } from '@sprigline/domain';
import { useTranslations } from 'next-intl';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { DateField } from '../../ui/form/date-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { asksContainer, movesPlants } from './typed-fields.ts';

export interface TypingHeadProps {
  readonly kind: WorkListKind;
  readonly today: string;
  readonly people: readonly Choice[];
  readonly workdays: readonly Choice[];
  readonly places: readonly Choice[];
  readonly toPlaceId: string | null;
}

/** What holds for the whole sheet: the day, the people, where plants went. */
export function TypingHead({ kind, today, people, workdays, places, toPlaceId }: TypingHeadProps) {
  const t = useTranslations('workLists.type');
  const looks = useTranslations('entries.looks');
  return (
    <div className="grid gap-4 sm:grid-cols-2">
      <DateField name="observedOn" value={today} />
      <ChoiceField name="seenBy" isOptional choices={people} hint={t('hints.seenBy')} />
      {workdays.length > 0 && <ChoiceField name="workdayId" isOptional choices={workdays} hint={t('hints.workdayId')} />}
      {kind === 'rootCheck' && <RadioField name="look" value="tug" choices={(['tug', 'lifted'] as const).map((look) => ({ value: look, words: looks(look) }))} />}
      {movesPlants(kind) && <ChoiceField name="placeId" isOptional value={toPlaceId} choices={places} hint={t('hints.placeId')} />}
      {asksContainer(kind) && <TextField name="container" isOptional hint={t('hints.container')} />}
    </div>
  );
}
