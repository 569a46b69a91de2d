import { NextIntlClientProvider, useMessages } from 'next-intl';
import type { ReactNode } from 'react';
import { minuteOfDay } from '../../lib/calendar.ts';
import { ENTRY, SAYING } from '../../lib/entry-said.ts';
import type { FormAction } from '../../lib/form-state.ts';
import { newId } from '../../lib/new-id.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { underPrefix } from '../../ui/form/under-prefix.ts';
import { ConfirmField } from '../../ui/ledger/confirm-field.tsx';

interface CorrectionFormProps {
  readonly action: FormAction;
  readonly send: string;
  readonly look?: 'main' | 'grave';
  readonly workplace: { readonly today: string; readonly zone: string };
  readonly children: ReactNode;
}

/** A correction that asks one thing: it is right again, or it never happened. */
export function CorrectionForm({ action, send, look = 'main', workplace: { today, zone }, children }: CorrectionFormProps) {
  const { incidents: { fields }, ui, entries } = useMessages();
  return (
    <NextIntlClientProvider messages={{ ui, entries: { flags: entries.flags, doubts: entries.doubts } }}>
      <ActionForm action={action} labels={{ ...underPrefix(SAYING, fields), reason: fields.reason }} send={send} look={look}>
        <HiddenField name={`${ENTRY}id`} value={newId()} />
        <input type="hidden" name="writtenAt" value={new Date().toISOString()} />
        <input type="hidden" name="madeOn" value={today} />
        <input type="hidden" name="minute" value={minuteOfDay(zone)} />
        <ConfirmField />
        {children}
      </ActionForm>
    </NextIntlClientProvider>
  );
}
