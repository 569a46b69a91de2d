import type { RecipeVersion } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Caution } from '../../ui/caution.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { DayField } from '../../ui/form/day-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface VersionFieldsProps {
  /** Before each name: `version/` within a new recipe. */
  readonly prefix?: string;
  /** What is done so far, as a beginning. */
  readonly version?: RecipeVersion | undefined;
  readonly versionId: string;
  readonly today: string;
}

export function VersionFields({ prefix = '', version, versionId, today }: VersionFieldsProps) {
  const { hints, hormoneForm, caution } = useMessages().recipes;
  return (
    <>
      <input type="hidden" name={`${prefix}id`} value={versionId} />
      <TextField name={`${prefix}hormone`} isOptional value={version?.hormone} hint={hints.hormone} />
      <TextField name={`${prefix}hormonePpm`} keypad="numeric" isOptional value={version?.hormonePpm} hint={hints.hormonePpm} />
      <ChoiceField name={`${prefix}hormoneForm`} isOptional value={version?.hormoneForm} choices={choicesFrom(hormoneForm)} />
      <Caution>{caution}</Caution>
      <TextField name={`${prefix}medium`} isOptional value={version?.medium} hint={hints.medium} />
      <TextField name={`${prefix}wound`} isOptional value={version?.wound} hint={hints.wound} />
      <ProseField name={`${prefix}steps`} isOptional value={version?.steps} hint={hints.steps} />
      <DayField name={`${prefix}madeOn`} today={today} />
    </>
  );
}
