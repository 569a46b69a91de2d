import type { Import } from '@sprigline/contract';
import { plainSpelling } from '@sprigline/domain';
import { useMessages, useTranslations } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { decidePlan } from './decide-plan.action.ts';
import { Part } from './part.tsx';
import { NEEDED, PLAN_FIELDS } from './plan-said.ts';
import { SpellingTicks } from './spelling-ticks.tsx';

/** How a sheet is to be read: guessed first, changed where the guess is wrong. */
export function PlanForm({ programme, sheet }: { programme: string; sheet: Import }) {
  const { imports: said } = useMessages();
  const t = useTranslations('imports');
  const { guess, plan } = sheet;
  const headings = guess.headings.map((heading, index) => ({ value: String(index), words: heading || `(${index + 1})` }));
  const acts = choicesFrom(said.acts);
  const orders = (guess.dayOrders.length > 0 ? guess.dayOrders : (['ymd', 'dmy', 'mdy'] as const)).map((order) => ({ value: order, words: said.dayOrders[order] }));

  return (
    <ActionForm action={decidePlan.bind(null, programme, sheet.id)} labels={labelsOf(sheet, said.plan, t('one.spellings'))} send={said.one.save}>
      <Part heading={said.one.columns}>
        {PLAN_FIELDS.map((field) => (
          <ChoiceField key={field} name={`columns/${field}`} isOptional={!NEEDED.has(field)} value={(plan ?? guess).columns[field]} choices={headings} />
        ))}
      </Part>
      <Part heading={said.one.words} lead={said.one.wordsLead}>
        {guess.words.map(({ word, times, act }, index) => (
          <ChoiceField key={word} name={`acts/${index}`} isOptional value={plan?.acts[plainSpelling(word)] ?? act} choices={acts} hint={t('one.times', { times })} />
        ))}
      </Part>
      {guess.dayOrders.length !== 1 && (
        <Part heading={said.one.days} lead={said.one.daysLead}>
          <RadioField name="dayOrder" value={plan?.dayOrder} choices={orders} />
        </Part>
      )}
      <SpellingTicks guess={guess} />
      <Part heading={said.one.looks} lead={said.one.looksLead}>
        <ChoiceField name="looks/withRoots" value={plan?.looks.withRoots ?? 'tug'} choices={choicesFrom(said.looks)} />
        <ChoiceField name="looks/withoutRoots" value={plan?.looks.withoutRoots ?? 'look'} choices={choicesFrom(said.looks)} />
      </Part>
    </ActionForm>
  );
}

/** What each field of the form is called; a word of the sheet is called by itself. */
function labelsOf({ guess }: Import, said: Readonly<Record<string, string>>, spellings: string): Record<string, string> {
  const columns = PLAN_FIELDS.map((field) => [`columns/${field}`, said[field] ?? field]);
  const words = guess.words.map(({ word }, index) => [`acts/${index}`, word]);
  const looks = ['withRoots', 'withoutRoots'].map((which) => [`looks/${which}`, said[which] ?? which]);
  const joins = Object.entries(guess.spellings).flatMap(([field, groups]) =>
    groups.map((group, index) => [`spellings/${field}/${index}`, group.spellings.map(({ seen, times }) => `“${seen}” × ${times}`).join(', ')]),
  );
  return Object.fromEntries([...columns, ...words, ...looks, ...joins, ['dayOrder', said['dayOrder'] ?? ''], ['spellings', spellings]]);
}
