import type { BatchInList } from '@sprigline/contract';
import { NextIntlClientProvider, useMessages, useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { minuteOfDay } from '../../lib/calendar.ts';
import type { FormAction } from '../../lib/form-state.ts';
import { lineField } from '../../lib/line-field.ts';
import { newId } from '../../lib/new-id.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { ConfirmField } from '../../ui/ledger/confirm-field.tsx';
import { BatchLine } from './batch-line.tsx';
import { type Job, LINE_FIELDS } from './jobs.ts';
import { LineFields, type LineChoices } from './line-fields.tsx';

interface JobFormProps {
  readonly job: Job | 'check';
  readonly action: FormAction;
  readonly batches: readonly BatchInList[];
  readonly choices: LineChoices;
  readonly workplace: { readonly today: string; readonly zone: string };
  /** What all lines have in common, above them. */
  readonly common?: ReactNode;
  /** Around the lines, such as what is worked out from them. */
  readonly after?: ReactNode;
}

/** A form with a line for each batch. */
export function JobForm({ job, action, batches, choices, workplace: { today, zone }, common, after }: JobFormProps) {
  const { bench: said, ui, entries } = useMessages();
  const t = useTranslations('bench');
  const fields = said.fields as Readonly<Record<string, string>>;
  const labels: Record<string, string> = { ...fields };
  batches.forEach(({ label, id }, at) => {
    for (const field of LINE_FIELDS[job]) labels[lineField(at, field)] = t('line', { field: fields[field] ?? field, batch: label ?? `…${id.slice(-6)}` });
  });
  return (
    <NextIntlClientProvider messages={{ ui, bench: said, entries: { flags: entries.flags, doubts: entries.doubts } }}>
      <ActionForm action={action} labels={labels} send={said.sends[job]}>
        <HiddenField name="writtenAt" value={new Date().toISOString()} />
        <HiddenField name="madeOn" value={today} />
        <HiddenField name="minute" value={String(minuteOfDay(zone))} />
        <HiddenField name="actId" value={newId()} />
        <HiddenField name="toBatchId" value={newId()} />
        <ConfirmField />
        {common && <h2 className="text-xl">{said.common}</h2>}
        {common}
        <DayField name="observedOn" today={today} />
        <h2 className="text-xl">{said.lines}</h2>
        <ul className="grid w-full gap-3">
          {batches.map((batch, at) => (
            <li key={batch.id}>
              <BatchLine at={at} batch={batch}>{batch.held && job !== 'check' ? <p>{said.heldLine}</p> : <LineFields job={job} at={at} choices={choices} label={choices.labels[at]} />}</BatchLine>
            </li>
          ))}
        </ul>
        {after}
        <ProseField name="note" isOptional rows={2} />
      </ActionForm>
    </NextIntlClientProvider>
  );
}
