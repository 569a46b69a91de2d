import type { Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { choicesFrom } from '../../ui/form/choices.ts';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export function TaxonFields({ taxon }: { taxon?: Taxon }) {
  const { taxa, words } = useMessages();
  return (
    <>
      <TextField name="scientificName" lang="la" value={taxon?.scientificName} hint={taxa.hints.scientificName} />
      <TextField name="commonName" isOptional value={taxon?.commonName} />
      <RadioField name="sensitivity" value={taxon?.sensitivity ?? 2} choices={choicesFrom(words.sensitivity)} hint={taxa.hints.sensitivity} />
      <TextField name="firstCheckDays" keypad="numeric" isOptional value={taxon?.firstCheckDays} hint={taxa.hints.days} />
      <TextField name="movingOnDays" keypad="numeric" isOptional value={taxon?.movingOnDays} hint={taxa.hints.days} />
      <TextField name="verdictDays" keypad="numeric" isOptional value={taxon?.verdictDays} hint={taxa.hints.days} />
    </>
  );
}
