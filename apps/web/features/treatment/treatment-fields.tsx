import { useMessages, useTranslations } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import { choicesFrom } from '../../ui/form/choices.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { SeveralField } from '../../ui/form/several-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface TreatmentFieldsProps {
  readonly name: string;
  /** Batches that stand in the place; none where the treatment is of one batch. */
  readonly batches: readonly Choice[];
}

/** What was done and to what; and what a spray's label and the law want to be known. */
export function TreatmentFields({ name, batches }: TreatmentFieldsProps) {
  const { treatments: { hints, spray }, entries } = useMessages();
  const t = useTranslations('treatments');
  const field = (one: string) => `${SAYING}${one}`;
  return (
    <>
      <RadioField name={field('what')} choices={choicesFrom(entries.treatments)} />
      {batches.length > 0 && <SeveralField name={field('batchIds')} isOptional choices={batches} hint={t('whole', { name })} />}
      <div>
        <h2 className="text-lg">{spray}</h2>
        <p className="text-sm text-ink-soft">{hints.spray}</p>
      </div>
      <TextField name={field('product')} isOptional />
      <TextField name={field('registration')} isOptional hint={hints.registration} />
      <TextField name={field('rate')} isOptional hint={hints.rate} />
      <TextField name={field('appliedBy')} isOptional hint={hints.appliedBy} />
      <TextField name={field('reentryHours')} keypad="decimal" isOptional hint={hints.reentryHours} />
      <TextField name={field('reentry')} isOptional hint={hints.reentry} />
    </>
  );
}
