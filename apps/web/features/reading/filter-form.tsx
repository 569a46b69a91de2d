import type { ReadingChoices } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import { FILTERS } from './reading-address.ts';

/** Narrows a reading. A plain form: what was chosen stands in the address, to be kept or handed on. */
export function FilterForm({ choices, chosen }: { choices: ReadingChoices; chosen: Readonly<Record<string, string>> }) {
  const { readings: said } = useMessages();
  const options = optionsOf(choices, said.ageClass);
  return (
    <form method="get" className="not-on-paper mb-10 rounded-lg border border-line bg-sheet p-4" aria-label={said.filter}>
      <div className="grid gap-4 sm:grid-cols-2 lg:grid-cols-3">
        {FILTERS.map((name) => (
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
        <div className="self-end">
          <button className={buttonClass('quiet')}>{said.show}</button>
        </div>
      </div>
    </form>
  );
}

function optionsOf({ stands, taxa, recipes, seasons }: ReadingChoices, ages: Readonly<Record<string, string>>): Record<(typeof FILTERS)[number], { id: string; name: string }[]> {
  return {
    standId: stands, taxonId: taxa, recipeId: recipes,
    season: seasons.map(({ year, name }) => ({ id: String(year), name })),
    ageClass: Object.entries(ages).map(([id, name]) => ({ id, name })),
  };
}
