import type { PlanTarget, Recipe, Site, Stand, Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom, choicesOf } from '../../ui/form/choices.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export interface TargetChoices {
  readonly stands: readonly Stand[];
  readonly taxa: readonly Taxon[];
  readonly sites: readonly Site[];
  readonly recipes: readonly Recipe[];
}

/** Shares as the form sends them, in the words of people. */
export const sureChoices = (sure: Readonly<Record<string, string>>): Choice[] => Object.entries(sure).map(([percent, words]) => ({ value: String(Number(percent) / 100), words }));

export function TargetFields({ target, stands, taxa, sites, recipes }: TargetChoices & { target?: PlanTarget }) {
  const { plans: said } = useMessages();
  const { hints } = said;
  const newest = recipes.flatMap(({ name, versions: [one] }) => (one ? [{ value: one.id, words: `${name} (${one.version})` }] : []));
  // An older version that was planned stays choosable.
  const withOld = (id: string | null | undefined, name: string | null | undefined) => (id && name && !newest.some(({ value }) => value === id) ? [...newest, { value: id, words: name }] : newest);
  return (
    <>
      <ChoiceField name="standId" value={target?.standId} choices={choicesOf(stands)} />
      <ChoiceField name="taxonId" value={target?.taxonId ?? (taxa.length === 1 ? taxa[0]?.id : undefined)} choices={taxa.map(({ id, commonName, scientificName }) => ({ value: id, words: commonName ?? scientificName }))} />
      <TextField name="plants" keypad="numeric" value={target?.plants} />
      <TextField name="donors" keypad="numeric" value={target?.donors} hint={hints.donors} />
      <RadioField name="stage" value={target?.stage ?? 'planted'} choices={choicesFrom(said.stages)} />
      <ChoiceField name="confidence" value={target?.confidence ?? 0.8} choices={sureChoices(said.sure)} hint={hints.confidence} />
      <ChoiceField name="siteId" isOptional value={target?.siteId} choices={sites.map(({ id, name }) => ({ value: id, words: name }))} />
      <TextField name="mostTrees" keypad="numeric" isOptional value={target?.mostTrees} hint={hints.mostTrees} />
      <details className="w-full max-w-prose">
        <summary className="inline-flex min-h-11 cursor-pointer items-center underline">{said.moreFields}</summary>
        <p className="mb-4 text-sm text-ink-soft">{hints.more}</p>
        <div className="grid gap-6">
          <DateField name="stickOn" isOptional value={target?.stickOn} />
          <ChoiceField name="recipeVersionId" isOptional value={target?.recipeVersionId} choices={withOld(target?.recipeVersionId, target?.recipe)} />
          <ChoiceField name="otherRecipeVersionId" isOptional value={target?.otherRecipeVersionId} choices={withOld(target?.otherRecipeVersionId, target?.otherRecipe)} hint={hints.otherRecipeVersionId} />
          <TextField name="lengthCm" keypad="decimal" isOptional value={target?.lengthCm} />
          <RadioField name="wood" isOptional value={target?.wood} choices={choicesFrom(said.wood)} />
          <TextField name="lightHours" keypad="decimal" isOptional value={target?.lightHours} />
          <TextField name="placesPerDonor" keypad="numeric" isOptional value={target?.placesPerDonor} hint={hints.placesPerDonor} />
        </div>
      </details>
    </>
  );
}
