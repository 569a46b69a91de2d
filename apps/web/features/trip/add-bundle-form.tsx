import type { DonorTree, LastCut } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { NumberPad } from '../../ui/form/number-pad.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { addBundle } from './add-bundle.action.ts';

interface AddBundleFormProps {
  readonly programme: string;
  readonly tripId: string;
  /** Made with the page: pressing twice adds one bundle. */
  readonly bundleId: string;
  /** Of the stand that the trip went to. */
  readonly trees: readonly DonorTree[];
  /** Those cut within two years before the trip. */
  readonly cuts: readonly LastCut[];
}

export function AddBundleForm({ programme, tripId, bundleId, trees, cuts }: AddBundleFormProps) {
  const said = useMessages().trips;
  const t = useTranslations('trips');
  const wordsOf = ({ id, label }: DonorTree): string => {
    const cut = cuts.find(({ donorTreeId }) => donorTreeId === id);
    return cut ? t('cutOn', { tree: label, day: sayDay(cut.cutOn) }) : label;
  };
  return (
    <ActionForm action={addBundle.bind(null, programme, tripId)} labels={said.fields} send={said.addBundle}>
      <input type="hidden" name="id" value={bundleId} />
      <ChoiceField name="donorTreeId" choices={trees.map((tree) => ({ value: tree.id, words: wordsOf(tree) }))} />
      <NumberPad key={bundleId} name="cuttings" />
      <RadioField name="shoot" isOptional choices={choicesFrom(said.shoot)} />
      <RadioField name="foliage" isOptional choices={choicesFrom(said.foliage)} />
      <RadioField name="base" isOptional choices={choicesFrom(said.base)} />
      <TextField name="heightM" keypad="decimal" isOptional />
      <TextField name="lengthCm" keypad="decimal" isOptional />
    </ActionForm>
  );
}
