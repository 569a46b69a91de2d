import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { choicesFrom, choicesOf } from '../../ui/form/choices.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import type { Asked } from './batch-query.ts';

interface FilterFormProps {
  readonly asked: Asked;
  readonly stands: readonly { readonly id: string; readonly name: string }[];
  readonly places: readonly Choice[];
}

/** Narrows the list; what is asked for stands in the address, to be kept or passed on. */
export function FilterForm({ asked, stands, places }: FilterFormProps) {
  const { batches: said, words } = useMessages();
  const fields = [
    { name: 'placeId', choices: places },
    { name: 'standId', choices: choicesOf(stands) },
    { name: 'stage', choices: choicesFrom(words.stage) },
    { name: 'state', choices: choicesFrom(said.states) },
  ] as const;
  const isNarrow = asked.placeId ?? asked.standId ?? asked.stage ?? asked.donorTreeId;
  return (
    <details open={isNarrow !== undefined} className="not-on-paper mb-6">
      <summary className="inline-flex min-h-11 cursor-pointer items-center font-semibold underline">{said.filter}</summary>
      <form method="get" className="mt-2 grid items-end gap-3 sm:grid-cols-2 xl:grid-cols-4">
        {asked.donorTreeId && <input type="hidden" name="donorTreeId" value={asked.donorTreeId} />}
        {fields.map(({ name, choices }) => (
          <label key={name} className="block min-w-0">
            <span className="block font-semibold">{said.filters[name]}</span>
            <select name={name} defaultValue={asked[name] ?? ''} className={INPUT}>
              <option value="">{said.all}</option>
              {choices.map(({ value, words: choice }) => <option key={value} value={value}>{choice}</option>)}
            </select>
          </label>
        ))}
        <div className="flex gap-3">
          <button className={buttonClass()}>{said.show}</button>
          <a href="?" className={buttonClass('quiet')}>{said.clear}</a>
        </div>
      </form>
    </details>
  );
}
