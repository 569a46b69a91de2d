import type { AllowFor, CompareBy, ComparedGroup, ReadingChoices } from '@sprigline/contract';
import { AllowFor as ALLOWED } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { PlainSelect } from '../../ui/form/plain-select.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import type { Asked } from './comparison-address.ts';
import { groupName } from './group-name.ts';

interface CompareFormProps {
  readonly asked: Asked;
  readonly choices: ReadingChoices;
  readonly chosen: Readonly<Record<string, string>>;
  /** Groups of the comparison as it is, to choose one of them. */
  readonly groups: readonly ComparedGroup[];
  readonly bys: readonly CompareBy[];
  /** Where all is shown again. */
  readonly here: string;
  readonly isPartner: boolean;
}

/** What is compared, against what, of which cuttings. A plain form: it stands in the address, to be kept or handed on. */
export function CompareForm({ asked, choices, chosen, groups, bys, here, isPartner }: CompareFormProps) {
  const words = useMessages();
  const { comparison: said, readings } = words;
  const named = groups.filter(({ key }) => key !== '').map((group) => ({ id: group.key, name: groupName(group, asked.by, words) }));
  const all = { id: '', name: readings.all };
  const allowed: AllowFor[] = ALLOWED.options.filter((one) => one !== asked.by && !(isPartner && one === 'place'));
  return (
    <form method="get" className="not-on-paper mb-10 grid gap-5 rounded-lg border border-line bg-sheet p-4" aria-label={said.form}>
      <div className="grid items-end gap-3 sm:grid-cols-2 sm:gap-4 lg:grid-cols-3">
        <PlainSelect name="by" label={said.fields.by} chosen={asked.by} options={bys.map((id) => ({ id, name: said.by[id] }))} />
        {named.length > 1 && <PlainSelect name="against" label={said.fields.against} chosen={asked.against} options={[{ id: '', name: said.against }, ...named]} />}
        <PlainSelect name="allowFor" label={said.fields.allowFor} chosen={asked.allowFor} options={[{ id: '', name: said.allowNothing }, ...allowed.map((id) => ({ id, name: said.by[id] }))]} />
      </div>
      <fieldset>
        <legend className="mb-2 font-semibold">{said.filters}</legend>
        <div className="grid grid-cols-2 items-end gap-3 sm:gap-4 lg:grid-cols-5">
          <PlainSelect name="taxonId" label={readings.fields.taxonId} chosen={chosen['taxonId']} options={[all, ...choices.taxa]} />
          <PlainSelect name="standId" label={readings.fields.standId} chosen={chosen['standId']} options={[all, ...choices.stands]} />
          <PlainSelect name="season" label={readings.fields.season} chosen={chosen['season']} options={[all, ...choices.seasons.map(({ year, name }) => ({ id: String(year), name }))]} />
          {!isPartner && <PlainSelect name="recipeId" label={readings.fields.recipeId} chosen={chosen['recipeId']} options={[all, ...choices.recipes]} />}
          <PlainSelect name="ageClass" label={readings.fields.ageClass} chosen={chosen['ageClass']} options={[all, ...Object.entries(readings.ageClass).map(([id, name]) => ({ id, name }))]} />
        </div>
      </fieldset>
      <div className="flex flex-wrap items-center gap-x-5 gap-y-2">
        <button className={buttonClass('quiet')}>{readings.show}</button>
        <RowLink href={here}>{readings.showAll}</RowLink>
      </div>
    </form>
  );
}
