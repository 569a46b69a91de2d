import type { Saying } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { newId } from '../../lib/new-id.ts';
import { EntryForm } from '../../ui/ledger/entry-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { ActFields } from './act-fields.tsx';
import type { Act } from './acts.ts';
import { mend, type Target } from './correct.action.ts';
import { deadLabels } from './dead-lines.tsx';

interface MendFormProps {
  readonly target: Target;
  readonly act: Act;
  readonly was: Saying | undefined;
  readonly day: string;
  readonly minute: number | null;
  readonly isCutting: boolean;
  readonly workplace: { readonly today: string; readonly zone: string };
}

/** What an entry should have said: filled in with what it says now, since only the slip is to be changed. */
export function MendForm({ target, act, was, day, minute, isCutting, workplace: { today, zone } }: MendFormProps) {
  const said = useMessages().batches;
  // Only entries that lead nowhere else are mended here, so there is nothing to choose from.
  const choices = { places: [], joinable: [], partners: [], partnerPlaces: [], label: undefined, stickings: [], recipes: [], newStickingId: newId(), toBatchId: newId() };
  return (
    <div className="mb-12">
      <EntryForm
        action={mend.bind(null, target, act, { day, minute })}
        fields={{ ...said.fields, ...deadLabels(said.deadN, said.deadCause) }}
        more={{ reason: said.reason }}
        send={said.mendSend}
        today={today}
        zone={zone}
        people={[]}
        day={day}
        isCorrection
      >
        <ActFields act={act} choices={choices} isCutting={isCutting} was={was} />
        <TextField name="reason" hint={said.reasonHint} />
      </EntryForm>
    </div>
  );
}
