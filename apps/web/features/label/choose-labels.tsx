import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import { Section } from '../../ui/section.tsx';
import type { LabelsOf } from './label-choice.ts';

interface ChooseLabelsProps {
  readonly programme: string;
  readonly of: LabelsOf;
  readonly name: 'placeId' | 'standId';
  readonly choices: readonly { readonly value: string; readonly words: string }[];
}

/** One way to labels: of what, and where. A form that only reads. */
export function ChooseLabels({ programme, of, name, choices }: ChooseLabelsProps) {
  const { labels: said } = useMessages();
  return (
    <Section heading={said.of[of]} lead={said.ofLead[of]}>
      <form method="get" action={pageOf(programme, 'labels', 'print')} className="not-on-paper flex flex-wrap items-end gap-3">
        <input type="hidden" name="of" value={of} />
        <label className="min-w-0 grow sm:max-w-96">
          <span className="block font-semibold">{said.fields[name]}</span>
          <select name={name} className={INPUT}>
            {choices.map(({ value, words }) => <option key={value} value={value}>{words}</option>)}
          </select>
        </label>
        <button className={buttonClass('quiet')}>{said.show}</button>
      </form>
    </Section>
  );
}
