import { NextIntlClientProvider, useMessages } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import { newId } from '../../lib/new-id.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { NumberPad } from '../../ui/form/number-pad.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { DeadLines } from './dead-lines.tsx';
import { SORT_KINDS } from './sort-said.ts';
import { SortSum } from './sort-sum.tsx';

interface SortFieldsProps {
  readonly isCutting: boolean;
  readonly inBooks: number;
  readonly places: readonly Choice[];
  /** Labels likely to be free: for the lifted and for the potted. */
  readonly labels: readonly string[];
}

/** The heaps of a sorted tray: what goes on, what stays, what is gone; and the sum of them all. */
export function SortFields({ isCutting, inBooks, places, labels: [first, second] }: SortFieldsProps) {
  const { sorting: said, batches, ui, entries } = useMessages();
  const name = (field: string) => `${SAYING}${field}`;
  return (
    <NextIntlClientProvider messages={{ ui, sorting: said, entries: { flags: entries.flags, doubts: entries.doubts } }}>
      <input type="hidden" name="inBooks" value={inBooks} />
      {SORT_KINDS.map((kind) => <HiddenField key={kind} name={`ids/${kind}`} value={newId()} />)}
      <SortSum inBooks={inBooks} foundHint={said.hints.foundReason} missingHint={said.hints.missing}>
        <h2 className="text-xl">{said.onwards}</h2>
        {isCutting && <Onwards kind="lifted" places={places} label={first} />}
        <Onwards kind="potted" places={places} label={isCutting ? second : first} />
        <h2 className="text-xl">{said.stays}</h2>
        <NumberPad name={name('back')} hint={said.hints.back} />
        {isCutting && (
          <div className="grid gap-4 sm:grid-cols-2">
            <TextField name={name('backRooted')} keypad="numeric" isOptional hint={said.hints.backRooted} />
            <TextField name={name('backCallused')} keypad="numeric" isOptional />
          </div>
        )}
        <h2 className="text-xl">{said.gone}</h2>
        <DeadLines />
        <NumberPad name={name('thrownOut')} />
        <TextField name={name('thrownReason')} isOptional hint={batches.hints.thrownReason} />
      </SortSum>
      <TextField name="time" isOptional hint={said.hints.time} />
    </NextIntlClientProvider>
  );
}

/** How many went on, and where they stand now. */
function Onwards({ kind, places, label }: { kind: 'lifted' | 'potted'; places: readonly Choice[]; label: string | undefined }) {
  const { hints } = useMessages().batches;
  const name = (field: string) => `${SAYING}${kind}/${field}`;
  return (
    <div className="grid gap-3">
      <HiddenField name={`to/${kind}`} value={newId()} />
      <NumberPad name={`${SAYING}${kind}`} />
      <div className="grid gap-4 sm:grid-cols-2">
        <ChoiceField name={name('placeId')} isOptional choices={places} />
        <TextField name={name('label')} isOptional value={label} hint={hints.label} />
        <TextField name={name('container')} isOptional />
        <TextField name={name('medium')} isOptional />
      </div>
    </div>
  );
}
