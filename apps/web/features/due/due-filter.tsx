import { useMessages } from 'next-intl';
import { dayAfter } from '../../lib/calendar.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';

interface DueFilterProps {
  readonly today: string;
  readonly chosen: { readonly kind?: string | undefined; readonly placeId?: string | undefined; readonly until: string };
  readonly places: readonly { readonly value: string; readonly words: string }[];
}

/** What, where and by when: a plain form that asks for the same page again. */
export function DueFilter({ today, chosen, places }: DueFilterProps) {
  const { due: said } = useMessages();
  const days = [{ day: today, words: said.walks.overdue }, { day: dayAfter(today, 7), words: said.walks.week }, { day: dayAfter(today, 28), words: said.walks.month }];
  return (
    <form method="get" className="not-on-paper mb-6 flex flex-wrap items-end gap-3">
      <Choice name="kind" label={said.kind} all={said.all} chosen={chosen.kind} choices={Object.entries(said.kinds).map(([value, words]) => ({ value, words }))} />
      <Choice name="placeId" label={said.place} all={said.allPlaces} chosen={chosen.placeId} choices={places} />
      <Choice name="until" label={said.until} chosen={chosen.until} choices={days.map(({ day, words }) => ({ value: day, words }))} />
      <button className={buttonClass('quiet')}>{said.show}</button>
    </form>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly label: string;
  readonly all?: string;
  readonly chosen: string | undefined;
  readonly choices: readonly { readonly value: string; readonly words: string }[];
}

function Choice({ name, label, all, chosen, choices }: ChoiceProps) {
  return (
    <label className="grow sm:grow-0">
      <span className="block font-semibold">{label}</span>
      <select name={name} defaultValue={chosen ?? ''} className={`${INPUT} sm:w-64`}>
        {all && <option value="">{all}</option>}
        {choices.map(({ value, words }) => (
          <option key={value} value={value}>{words}</option>
        ))}
      </select>
    </label>
  );
}
