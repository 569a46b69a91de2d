import type { ReadingChoices } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { FILTERS, type FilterName } from './reading-address.ts';

interface FilterFormProps {
  readonly choices: ReadingChoices;
  readonly chosen: Readonly<Record<string, string>>;
  /** Address of the page itself, where all is shown again. */
  readonly here: string;
  /** What can be chosen on this page. */
  readonly names?: readonly FilterName[];
}

/** Narrows a reading. A plain form: what was chosen stands in the address, to be kept or handed on. */
export function FilterForm({ choices, chosen, here, names = FILTERS }: FilterFormProps) {
  const { readings: said } = useMessages();
  const options = optionsOf(choices, said.ageClass);
  return (
    <form method="get" className="not-on-paper mb-10 rounded-lg border border-line bg-sheet p-4" aria-label={said.filter}>
      <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-3">
        {names.map((name) => (
          <div key={name}>
            <label htmlFor={name} className="font-semibold">{said.fields[name]}</label>
            <select id={name} name={name} defaultValue={chosen[name] ?? ''} className={INPUT}>
              <option value="">{said.all}</option>
              {options[name].map(({ id, name: words }) => (
                <option key={id} value={id}>{words}</option>
              ))}
            </select>
          </div>
        ))}
        <div className="flex items-center gap-5 self-end">
          <button className={buttonClass('quiet')}>{said.show}</button>
          {names.some((name) => chosen[name]) && <RowLink href={here}>{said.showAll}</RowLink>}
        </div>
      </div>
    </form>
  );
}

function optionsOf({ stands, taxa, recipes, seasons }: ReadingChoices, ages: Readonly<Record<string, string>>): Record<FilterName, { id: string; name: string }[]> {
  return {
    standId: stands, taxonId: taxa, recipeId: recipes,
    season: seasons.map(({ year, name }) => ({ id: String(year), name })),
    ageClass: Object.entries(ages).map(([id, name]) => ({ id, name })),
  };
}
