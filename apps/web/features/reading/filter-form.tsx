import type { ReadingChoices } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { PlainSelect } from '../../ui/form/plain-select.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { FILTERS, type FilterName, type Group, GROUPS } from './reading-address.ts';

interface FilterFormProps {
  readonly choices: ReadingChoices;
  readonly chosen: Readonly<Record<string, string>>;
  /** Address of the page itself, where all is shown again. */
  readonly here: string;
  /** By what the funnels of this page are told apart, where that can be chosen. */
  readonly by?: Group;
  /** What there is to choose from for that. */
  readonly groups?: readonly Group[];
  /** What can be chosen on this page. */
  readonly names?: readonly FilterName[];
}

/** Narrows a reading. A plain form: what was chosen stands in the address, to be kept or handed on. */
export function FilterForm({ choices, chosen, here, by, groups = GROUPS, names = FILTERS }: FilterFormProps) {
  const { readings: said } = useMessages();
  const options = optionsOf(choices, said.ageClass);
  return (
    <form method="get" className="not-on-paper mb-10 rounded-lg border border-line bg-sheet p-4" aria-label={said.filter}>
      <div className="grid grid-cols-2 items-end gap-x-3 gap-y-3 sm:gap-4 lg:grid-cols-4">
        {names.filter((name) => options[name].length > 0).map((name) => (
          <PlainSelect key={name} name={name} label={said.fields[name]} chosen={chosen[name]} options={[{ id: '', name: said.all }, ...options[name]]} />
        ))}
        {by && <PlainSelect name="by" label={said.fields.by} chosen={by} options={groups.map((id) => ({ id, name: said.by[id] }))} />}
        <div className="flex flex-wrap items-center gap-x-5 gap-y-2">
          <button className={buttonClass('quiet')}>{said.show}</button>
          {names.some((name) => chosen[name]) && <RowLink href={here}>{said.showAll}</RowLink>}
        </div>
      </div>
    </form>
  );
}

export function optionsOf({ stands, taxa, recipes, seasons, places }: ReadingChoices, ages: Readonly<Record<string, string>>): Record<FilterName, { id: string; name: string }[]> {
  return {
    standId: stands, taxonId: taxa, recipeId: recipes, placeId: places,
    season: seasons.map(({ year, name }) => ({ id: String(year), name })),
    ageClass: Object.entries(ages).map(([id, name]) => ({ id, name })),
  };
}
