import type { Regime } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Caution } from '../../ui/caution.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { DayField } from '../../ui/form/day-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface RegimeFieldsProps {
  readonly today: string;
  /** What is written of it, or what held before: most changes change one thing. */
  readonly regime?: Regime | undefined;
  readonly fromDay?: string | undefined;
}

export function RegimeFields({ today, regime, fromDay }: RegimeFieldsProps) {
  const { hints, air, caution } = useMessages().regimes;
  return (
    <>
      <DayField name="fromDay" today={today} value={fromDay} isOpen />
      <TextField name="lightHours" keypad="decimal" isOptional value={regime?.lightHours} hint={hints.lightHours} />
      <TextField name="heatC" keypad="decimal" isOptional value={regime?.heatC} hint={hints.heatC} />
      <RadioField name="air" isOptional value={regime?.air} choices={choicesFrom(air)} />
      <TextField name="cover" isOptional value={regime?.cover} hint={hints.cover} />
      <ProseField name="note" isOptional rows={2} value={fromDay === undefined ? null : regime?.note} />
      <Caution>{caution}</Caution>
    </>
  );
}
