import type { Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { INPUT } from '../../ui/form/input-class.ts';
import { PlainSelect } from '../../ui/form/plain-select.tsx';

/** What is asked for, as it stands in the address. */
export interface LostPlantSearch {
  readonly placeId?: string;
  readonly stage?: string;
  readonly taxonId?: string;
  readonly row?: string;
  readonly foliage?: string;
  /** `row`: a whole row lost its label. */
  readonly lost?: string;
}

const namesOf = (words: Readonly<Record<string, string>>) => Object.entries(words).map(([id, name]) => ({ id, name }));

/** What can be seen of a plant without a label: where it stood, and what it is. A plain form that asks for the same page again. */
export function LostPlantForm({ asked, places, taxa }: { asked: LostPlantSearch; places: readonly Choice[]; taxa: readonly Taxon[] }) {
  const { ui, words, lostLabel: said } = useMessages();
  const any = { id: '', name: said.any };
  return (
    <form method="get" className="not-on-paper mb-10 grid max-w-prose gap-4">
      <PlainSelect name="placeId" id="found-at" label={said.fields.placeId} chosen={asked.placeId} options={[{ id: '', name: ui.chooseOne }, ...places.map(({ value, words: name }) => ({ id: value, name }))]} />
      <div className="grid gap-4 sm:grid-cols-2">
        <PlainSelect name="stage" label={said.fields.stage} chosen={asked.stage} options={[any, ...namesOf(words.stage)]} />
        <PlainSelect name="taxonId" label={said.fields.taxonId} chosen={asked.taxonId} options={[any, ...taxa.map(({ id, scientificName, commonName }) => ({ id, name: commonName ?? scientificName }))]} />
        <div>
          <label htmlFor="row" className="font-semibold">{said.fields.row}</label>
          <input id="row" name="row" inputMode="numeric" autoComplete="off" defaultValue={asked.row ?? ''} className={INPUT} />
        </div>
        <PlainSelect name="foliage" label={said.fields.foliage} chosen={asked.foliage} options={[any, ...namesOf(said.foliage)]} />
      </div>
      <button className={`${buttonClass()} justify-self-start`}>{said.show}</button>
    </form>
  );
}
