import { NextIntlClientProvider, useMessages } from 'next-intl';
import { minuteOfDay } from '../../lib/calendar.ts';
import { ENTRY } from '../../lib/entry-said.ts';
import { newId } from '../../lib/new-id.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { ConfirmField } from '../../ui/ledger/confirm-field.tsx';
import { type Target, withdraw } from './correct.action.ts';

/** Takes an entry out of the books, with a reason. */
export function WithdrawForm({ target, workplace: { today, zone } }: { target: Target; workplace: { readonly today: string; readonly zone: string } }) {
  const { batches: said, ui, entries } = useMessages();
  return (
    <NextIntlClientProvider messages={{ ui, entries: { flags: entries.flags, doubts: entries.doubts } }}>
      <ActionForm action={withdraw.bind(null, target)} labels={{ reason: said.reason }} send={said.withdrawSend} look="grave">
        <input type="hidden" name={`${ENTRY}id`} value={newId()} />
        <input type="hidden" name="writtenAt" value={new Date().toISOString()} />
        <input type="hidden" name="madeOn" value={today} />
        <input type="hidden" name="minute" value={minuteOfDay(zone)} />
        <ConfirmField />
        <TextField name="reason" hint={said.reasonHint} />
      </ActionForm>
    </NextIntlClientProvider>
  );
}
