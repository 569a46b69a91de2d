import type { DonorTree, Stand, Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom, choicesOf } from '../../ui/form/choices.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface DonorTreeFieldsProps {
  readonly donorTree?: DonorTree;
  readonly stands: readonly Stand[];
  readonly taxa: readonly Taxon[];
  readonly today: string;
  /** Chosen to begin with. */
  readonly standId?: string | undefined;
}

export function DonorTreeFields({ donorTree: tree, stands, taxa, today, standId }: DonorTreeFieldsProps) {
  const said = useMessages().donorTrees;
  const species = taxa.map(({ id, commonName, scientificName }) => ({ value: id, words: commonName ? `${commonName} (${scientificName})` : scientificName }));
  return (
    <>
      <TextField name="label" value={tree?.label} hint={said.hints.label} />
      <ChoiceField name="standId" value={tree?.standId ?? standId} choices={choicesOf(stands)} />
      <ChoiceField name="taxonId" value={tree?.taxonId ?? (taxa.length === 1 ? taxa[0]?.id : undefined)} choices={species} />
      <RadioField name="sex" value={tree?.sex ?? 'unknown'} choices={choicesFrom(said.sex)} />
      <ChoiceField name="ageClass" isOptional value={tree?.ageClass} choices={choicesFrom(said.ageClass)} />
      <TextField name="estimatedAgeYears" keypad="numeric" isOptional value={tree?.estimatedAgeYears} />
      <TextField name="elevationBandM" keypad="numeric" isOptional value={tree?.elevationBandM} hint={said.hints.elevationBandM} />
      <RadioField name="state" value={tree?.state ?? 'standing'} choices={choicesFrom(said.state)} />
      {/* Whoever mends a label has not seen the tree today. */}
      {tree ? <DateField name="stateSeenOn" isOptional value={tree.stateSeenOn} /> : <DayField name="stateSeenOn" today={today} />}
      <ProseField name="note" isOptional value={tree?.note} hint={said.hints.note} />
    </>
  );
}
