import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { INPUT } from '../../ui/form/input-class.ts';

interface TreatmentFilterProps {
  readonly asked: URLSearchParams;
  readonly from: string;
  readonly until: string;
  readonly places: readonly Choice[];
}

/** What, where and when: a plain form that asks for the same page again. */
export function TreatmentFilter({ asked, from, until, places }: TreatmentFilterProps) {
  const { treatments: said, entries } = useMessages();
  const choices = { what: [{ value: 'all', words: said.all }, ...Object.entries(entries.treatments).map(([value, words]) => ({ value, words }))], placeId: [{ value: '', words: said.allPlaces }, ...places] };
  return (
    <form method="get" className="not-on-paper mb-6 flex flex-wrap items-end gap-3">
      {(['what', 'placeId'] as const).map((name) => (
        <label key={name} className="min-w-0 grow basis-full sm:max-w-56 sm:basis-32">
          <span className="block font-semibold">{said.filters[name]}</span>
          <select name={name} defaultValue={asked.get(name) ?? (name === 'what' ? 'all' : '')} className={INPUT}>
            {choices[name].map(({ value, words }) => <option key={value} value={value}>{words}</option>)}
          </select>
        </label>
      ))}
      {(['from', 'until'] as const).map((name) => (
        <label key={name} className="grow basis-44 sm:max-w-56">
          <span className="block font-semibold">{said.filters[name]}</span>
          <input type="date" name={name} defaultValue={{ from, until }[name]} className={INPUT} />
        </label>
      ))}
      <button className={buttonClass('quiet')}>{said.show}</button>
    </form>
  );
}
