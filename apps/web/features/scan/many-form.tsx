'use client';

import { useMessages, useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { minuteOfDay } from '../../lib/calendar.ts';
import { lineField } from '../../lib/line-field.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Caution } from '../../ui/caution.tsx';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { Field } from '../../ui/form/field.tsx';
import { useField } from '../../ui/form/form-context.ts';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { INPUT } from '../../ui/form/input-class.ts';
import { ConfirmField } from '../../ui/ledger/confirm-field.tsx';
import type { ManyScreenProps } from './many-screen.tsx';
import { putBack, type Scanned, withoutBatch } from './scanned.ts';
import { ScannedLine } from './scanned-line.tsx';
import { writeScanned } from './write-scanned.action.ts';

interface ManyFormProps extends ManyScreenProps {
  readonly list: Scanned;
  readonly change: (step: (list: Scanned) => Scanned) => void;
}

/** The list, where it goes, and on which day. */
export function ManyForm({ programme, places, today, zone, list, change }: ManyFormProps) {
  const { moving: said } = useMessages().scan;
  const t = useTranslations('scan.moving');
  const isSite = places.some(({ value, isSite: is }) => is && value === list.placeId);
  const plants = list.batches.reduce((sum, { balance }) => sum + balance, 0);
  const labels = { ...said.fields, ...Object.fromEntries(list.batches.map(({ at, label }) => [lineField(at, 'n'), t('line', { label })])) };
  return (
    <section aria-labelledby="scanned" className="grid content-start gap-4">
      <h2 id="scanned" className="text-xl">{said.list}</h2>
      <p role="status" className="text-2xl font-semibold tabular-nums">{t('count', { n: list.batches.length, plants })}</p>
      {list.takenOff && <button type="button" onClick={() => change(putBack)} className={buttonClass('quiet')}>{t('putBack', { label: list.takenOff.label })}</button>}
      {list.batches.length > 0 && (
        <ActionForm action={writeScanned.bind(null, programme)} labels={labels} send={isSite ? said.planted : said.moved}>
          <Around list={list} today={today} zone={zone} />
          <ConfirmField />
          <ul className="grid w-full gap-2">
            {list.batches.map((batch) => <li key={batch.batchId}><ScannedLine batch={batch} isPlanting={isSite} takeOff={() => change((before) => withoutBatch(before, batch.batchId))} /></li>)}
          </ul>
          <WhereTo places={places} placeId={list.placeId} choose={(placeId) => change((before) => ({ ...before, placeId }))} />
          <DayField name="observedOn" today={today} />
          <Caution>{isSite ? said.cautionSite : said.caution}</Caution>
        </ActionForm>
      )}
    </section>
  );
}

/** When it was scanned. Made once in the browser, so that sending again sends the same. */
function Around({ list, today, zone }: { list: Scanned; today: string; zone: string }) {
  const [made, setMade] = useState({ writtenAt: '', minute: '' });
  useEffect(() => setMade({ writtenAt: new Date().toISOString(), minute: String(minuteOfDay(zone)) }), [zone, list.batches.length]);
  return (
    <>
      <input type="hidden" name="listId" value={list.id} />
      <input type="hidden" name="lines" value={list.next} />
      <HiddenField name="madeOn" value={today} />
      <HiddenField name="writtenAt" value={made.writtenAt} />
      <HiddenField name="minute" value={made.minute} />
    </>
  );
}

/** Chosen here, or by scanning the label of a place. */
function WhereTo({ places, placeId, choose }: Pick<ManyScreenProps, 'places'> & { placeId: string; choose: (placeId: string) => void }) {
  const { moving: said } = useMessages().scan;
  const field = useField('placeId');
  return (
    <Field name="placeId" hint={said.whereToHint} hintId={field.hintId} errorId={field.errorId}>
      <select key={field.key} id="placeId" name="placeId" value={placeId} onChange={(event) => choose(event.currentTarget.value)} aria-invalid={field.error !== undefined} aria-describedby={`${field.hintId} ${field.error ? field.errorId : ''}`.trim()} className={INPUT}>
        <option value="">{said.choose}</option>
        {places.map(({ value, words }) => <option key={value} value={value}>{words}</option>)}
      </select>
    </Field>
  );
}
