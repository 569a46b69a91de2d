import type { PlaceInTree, Stand, Taxon } from '@sprigline/contract';
import { WORK_LIST_KINDS } from '@sprigline/domain';
import { useMessages } from 'next-intl';
import { placeChoices } from '../../lib/place-path.ts';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface ListFormFieldsProps {
  readonly places: readonly PlaceInTree[];
  readonly stands: readonly Stand[];
  readonly taxa: readonly Taxon[];
  readonly kind: string | undefined;
  readonly placeId: string | undefined;
}

/** What is to be done, where, and to which plants. */
export function ListFormFields({ places, stands, taxa, kind, placeId }: ListFormFieldsProps) {
  const { kinds, what, hints } = useMessages().workLists;
  const species = taxa.map(({ id, commonName, scientificName }) => ({ value: id, words: commonName ?? scientificName }));
  return (
    <>
      <ul className="list-disc pl-5 text-sm text-ink-soft">{WORK_LIST_KINDS.map((each) => <li key={each}>{kinds[each]}: {what[each]}</li>)}</ul>
      <RadioField
        name="kind"
        value={kind ?? 'pottingUp'}
        choices={WORK_LIST_KINDS.map((each) => ({ value: each, words: kinds[each] }))}
      />
      <ChoiceField name="asked/placeId" isOptional value={placeId} hint={hints['asked/placeId']} choices={placeChoices(places)} />
      <ChoiceField name="asked/standId" isOptional choices={choicesOf(stands)} />
      <ChoiceField name="asked/taxonId" isOptional choices={species} />
      <ChoiceField name="asked/toPlaceId" isOptional hint={hints['asked/toPlaceId']} choices={placeChoices(places)} />
      <TextField name="asked/days" keypad="numeric" isOptional hint={hints['asked/days']} />
      <TextField name="asked/atMost" keypad="numeric" isOptional hint={hints['asked/atMost']} />
    </>
  );
}
