import { useMessages } from 'next-intl';
import { lineField } from '../../lib/line-field.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import type { Job } from './jobs.ts';

export interface LineChoices {
  readonly places: readonly Choice[];
  /** Labels likely to be free, one for each line. */
  readonly labels: readonly string[];
}

/** What is asked of one batch of many. */
export function LineFields({ job, at, choices, label }: { job: Job | 'check'; at: number; choices: LineChoices; label: string | undefined }) {
  const { bench: said, entries } = useMessages();
  const name = (field: string) => lineField(at, field);
  const causes = Object.values(entries.causes).map((words) => ({ value: words, words }));
  switch (job) {
    case 'moving':
      return <TickField name={name('chosen')} />;
    case 'potting':
      return (
        <div className="grid gap-4 sm:grid-cols-2">
          <TextField name={name('n')} keypad="numeric" isOptional />
          <TextField name={name('label')} isOptional value={label} />
          <TickField name={name('leavesNone')} />
          <details className="sm:col-span-2">
            <summary className="inline-flex min-h-14 cursor-pointer items-center underline">{said.otherwise}</summary>
            <div className="grid gap-4 sm:grid-cols-2">
              <ChoiceField name={name('placeId')} isOptional choices={choices.places} hint={said.hints.placeLine} />
              <TextField name={name('container')} isOptional hint={said.hints.placeLine} />
            </div>
          </details>
        </div>
      );
    case 'check':
      return (
        <div className="grid gap-4 sm:grid-cols-2">
          <TextField name={name('alive')} keypad="numeric" isOptional />
          <TextField name={name('notFound')} keypad="numeric" isOptional />
          <TextField name={name('dead')} keypad="numeric" isOptional />
          <ChoiceField name={name('cause')} isOptional choices={causes} />
          <TextField name={name('notLooked')} keypad="numeric" isOptional />
        </div>
      );
    default:
      return <TextField name={name('n')} keypad="numeric" isOptional />;
  }
}
