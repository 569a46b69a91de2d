import type { DonorTree, Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import { newId } from '../../lib/new-id.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { NumberPad } from '../../ui/form/number-pad.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';

interface OpeningFieldsProps {
  readonly trees: readonly DonorTree[];
  readonly taxa: readonly Taxon[];
  readonly places: readonly Choice[];
  readonly label: string | undefined;
}

export function OpeningFields({ trees, taxa, places, label }: OpeningFieldsProps) {
  const { sticking: { opening: said, hints }, words } = useMessages();
  const name = (field: string) => `${SAYING}${field}`;
  return (
    <>
      <input type="hidden" name={name('batchId')} value={newId()} />
      <input type="hidden" name={name('stickingId')} value={newId()} />
      <NumberPad name={name('n')} />
      <RadioField name={name('stage')} choices={choicesFrom(words.stage)} />
      <RadioField name={name('source')} choices={choicesFrom(said.sources)} value="opening" hint={said.hints.source} />
      <ChoiceField name={name('donorTreeId')} isOptional choices={trees.map((tree) => ({ value: tree.id, words: tree.label }))} hint={said.hints.donorTreeId} />
      <details className="w-full max-w-prose">
        <summary className="inline-flex min-h-11 cursor-pointer items-center underline">{said.candidates}</summary>
        <fieldset className="mt-2">
          <legend className="text-sm text-ink-soft">{said.hints.candidates}</legend>
          <div className="mt-2 grid max-h-80 gap-2 overflow-y-auto sm:grid-cols-2">
            {trees.map((tree) => <TickField key={tree.id} name={`candidates/${tree.id}`} />)}
          </div>
        </fieldset>
      </details>
      <TextField name="cameFrom" isOptional hint={said.hints.cameFrom} />
      <ChoiceField name={name('taxonId')} isOptional choices={taxa.map((taxon) => ({ value: taxon.id, words: taxon.commonName ?? taxon.scientificName }))} hint={said.hints.taxonId} />
      <ChoiceField name={name('placeId')} choices={places} />
      <TextField name={name('rows')} isOptional hint={hints.rows} />
      <TextField name={name('label')} isOptional value={label} hint={hints.label} />
      <TextField name={name('rooted')} keypad="numeric" isOptional hint={said.hints.rooted} />
      <DateField name={name('stuckOn')} isOptional hint={said.hints.stuckOn} />
      <TextField name={name('container')} isOptional />
      <TextField name={name('medium')} isOptional />
    </>
  );
}
