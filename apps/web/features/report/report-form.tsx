import { useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';

interface ChooseProps {
  readonly name: string;
  readonly label: string;
  readonly chosen: string | undefined;
  /** What no choice means. */
  readonly none: string;
  readonly choices: readonly { readonly id: string; readonly name: string }[];
}

interface ReportFormProps {
  readonly label: string;
  readonly choices: readonly ChooseProps[];
  /** The day that is shown; left out where a report is of today only. */
  readonly asOf?: string | undefined;
  readonly today: string;
}

/** What a report is about: a plain form that asks for the same page again. */
export function ReportForm({ label, choices, asOf, today }: ReportFormProps) {
  const { reports: said } = useMessages();
  return (
    <form method="get" aria-label={label} className="mb-6 flex flex-wrap items-end gap-3 rounded-lg border border-line bg-sheet p-4">
      {choices.map(({ name, label: words, chosen, none, choices: options }) => (
        <label key={name} className="min-w-0 grow basis-full sm:max-w-64 sm:basis-40">
          <span className="block font-semibold">{words}</span>
          <select name={name} defaultValue={chosen ?? ''} className={INPUT}>
            <option value="">{none}</option>
            {options.map((option) => <option key={option.id} value={option.id}>{option.name}</option>)}
          </select>
        </label>
      ))}
      <label>
        <span className="block font-semibold">{said.day}</span>
        <input type="date" name="asOf" max={today} defaultValue={asOf} className={`${INPUT} max-w-52`} />
      </label>
      <button className={buttonClass()}>{said.show}</button>
    </form>
  );
}
