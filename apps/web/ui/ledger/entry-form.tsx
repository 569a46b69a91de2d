import { NextIntlClientProvider, useMessages } from 'next-intl';
import type { ReactNode } from 'react';
import { minuteOfDay } from '../../lib/calendar.ts';
import { ENTRY, SAYING } from '../../lib/entry-said.ts';
import type { FormAction } from '../../lib/form-state.ts';
import { newId } from '../../lib/new-id.ts';
import { ActionForm } from '../form/action-form.tsx';
import { ChoiceField } from '../form/choice-field.tsx';
import { choicesOf } from '../form/choices.ts';
import { DayField } from '../form/day-field.tsx';
import { ProseField } from '../form/prose-field.tsx';
import { underPrefix } from '../form/under-prefix.ts';
import { ConfirmField } from './confirm-field.tsx';

export interface EntryFormProps {
  readonly action: FormAction;
  /** What the fields of the saying are called. */
  readonly fields: Readonly<Record<string, string>>;
  /** Labels of fields that are no part of the saying. */
  readonly more?: Readonly<Record<string, string>>;
  readonly send: string;
  readonly today: string;
  readonly zone: string;
  /** Who else may have seen it. */
  readonly people: readonly { readonly id: string; readonly name: string }[];
  /** Workdays that it may be part of, and the one that this device remembers. */
  readonly workdays?: { readonly choices: readonly { readonly value: string; readonly words: string }[]; readonly remembered: string | undefined };
  /** For a correction: the day that it was said for. */
  readonly day?: string | undefined;
  /** A correction changes what was said, not who saw it nor the note. */
  readonly isCorrection?: boolean;
  readonly children: ReactNode;
}

/** One entry as a form: what is said, which day, who saw it; and, where it does not add up, the question whether to write it all the same. */
export function EntryForm({ action, fields, more, send, today, zone, people, workdays, day, isCorrection = false, children }: EntryFormProps) {
  const { ui, entries } = useMessages();
  return (
    <NextIntlClientProvider messages={{ ui, entries: { flags: entries.flags, doubts: entries.doubts } }}>
      <ActionForm action={action} send={send} labels={{ ...underPrefix(SAYING, fields), ...underPrefix(ENTRY, entries.fields), ...more }}>
        <input type="hidden" name={`${ENTRY}id`} value={newId()} />
        <input type="hidden" name="writtenAt" value={new Date().toISOString()} />
        <input type="hidden" name="madeOn" value={today} />
        <input type="hidden" name="minute" value={minuteOfDay(zone)} />
        <ConfirmField />
        {children}
        <DayField name={`${ENTRY}observedOn`} today={today} value={day} />
        {workdays && workdays.choices.length > 0 && <ChoiceField name={`${ENTRY}workdayId`} isOptional choices={workdays.choices} value={workdays.remembered} hint={entries.hints.workdayId} />}
        {!isCorrection && people.length > 0 && <ChoiceField name={`${ENTRY}seenBy`} isOptional choices={choicesOf(people)} hint={entries.hints.seenBy} />}
        {!isCorrection && <ProseField name={`${ENTRY}note`} isOptional rows={2} />}
      </ActionForm>
    </NextIntlClientProvider>
  );
}
