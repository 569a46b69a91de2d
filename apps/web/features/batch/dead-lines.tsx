import { useMessages } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

/** How many causes a plain form has room for. */
export const DEAD_LINES = 3;

/** Some of the dead, each line with what the eye sees. The words themselves are written down, so that an old log reads as it was told. */
export function DeadLines({ dead = [] }: { dead?: readonly { readonly n: number; readonly cause: string }[] }) {
  const { entries, batches: said } = useMessages();
  const causes = [...new Set([...Object.values(entries.causes), ...dead.map(({ cause }) => cause)])].map((words) => ({ value: words, words }));
  return (
    <fieldset className="w-full max-w-prose">
      <legend className="text-lg font-semibold">{said.deadTitle}</legend>
      <p className="text-sm text-ink-soft">{said.deadHint}</p>
      <div className="mt-2 grid gap-3">
        {Array.from({ length: DEAD_LINES }, (_, at) => (
          <div key={at} className="grid items-end gap-x-3 gap-y-1 sm:grid-cols-[16rem_1fr]">
            <TextField name={`${SAYING}dead/${at}/n`} keypad="numeric" isOptional value={dead[at]?.n} />
            <ChoiceField name={`${SAYING}dead/${at}/cause`} isOptional choices={causes} value={dead[at]?.cause} />
          </div>
        ))}
      </div>
    </fieldset>
  );
}

export const deadLabels = (n: string, cause: string): Record<string, string> =>
  Object.fromEntries(Array.from({ length: DEAD_LINES }, (_, at) => [[`dead/${at}/n`, n], [`dead/${at}/cause`, cause]]).flat());
