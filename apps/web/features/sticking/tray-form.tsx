import type { DonorTree, Recipe, Trip } from '@sprigline/contract';
import { NextIntlClientProvider, useMessages } from 'next-intl';
import { minuteOfDay } from '../../lib/calendar.ts';
import { newId } from '../../lib/new-id.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { ConfirmField } from '../../ui/ledger/confirm-field.tsx';
import { BundleLine } from './bundle-line.tsx';
import { stickTray } from './stick-tray.action.ts';
import { trayLabels } from './tray-labels.ts';

interface TrayFormProps {
  readonly programme: string;
  readonly trip: Trip;
  readonly trees: readonly DonorTree[];
  readonly recipes: readonly Recipe[];
  readonly trays: readonly Choice[];
  /** Labels likely to be free, one for each bundle. */
  readonly labels: readonly string[];
  readonly workplace: { readonly today: string; readonly zone: string };
}

/** One tray and what goes into it: a line for each bundle of the trip. */
export function TrayForm({ programme, trip, trees, recipes, trays, labels, workplace: { today, zone } }: TrayFormProps) {
  const { sticking: said, ui, entries } = useMessages();
  const donors = trip.bundles.map(({ donorTreeId }) => trees.find(({ id }) => id === donorTreeId)?.label ?? `…${donorTreeId.slice(-6)}`);
  return (
    <NextIntlClientProvider messages={{ ui, entries: { flags: entries.flags, doubts: entries.doubts } }}>
      <ActionForm action={stickTray.bind(null, programme, trip.id, trip.bundles.length)} labels={trayLabels(said, donors)} send={said.send}>
        <HiddenField name="writtenAt" value={new Date().toISOString()} />
        <HiddenField name="madeOn" value={today} />
        <HiddenField name="minute" value={String(minuteOfDay(zone))} />
        <ConfirmField />
        <h2 className="text-xl">{said.tray}</h2>
        <ChoiceField name="placeId" choices={trays} />
        <ChoiceField name="recipeVersionId" isOptional choices={recipes.map(choiceOf)} />
        <TextField name="medium" isOptional hint={said.hints.medium} />
        <DayField name="observedOn" today={today} />
        <details className="w-full max-w-prose">
          <summary className="inline-flex min-h-11 cursor-pointer items-center underline">{said.moreTitle}</summary>
          <div className="mt-2"><RadioField name="wood" isOptional choices={choicesFrom(said.wood)} hint={said.hints.wood} /></div>
        </details>
        <div>
          <h2 className="text-xl">{said.bundles}</h2>
          <p className="max-w-prose text-ink-soft">{said.bundlesLead}</p>
        </div>
        <ul className="grid w-full gap-4">
          {trip.bundles.map((bundle, at) => (
            <li key={bundle.id}>
              <BundleLine at={at} bundle={bundle} donor={donors[at] ?? ''} label={labels[at]} ids={{ entryId: newId(), batchId: newId() }} />
            </li>
          ))}
        </ul>
        <ProseField name="note" isOptional rows={2} />
      </ActionForm>
    </NextIntlClientProvider>
  );
}

/** The newest version: an older one is not what was done today. */
const choiceOf = ({ name, versions: [newest] }: Recipe): Choice => ({ value: newest?.id ?? '', words: newest ? `${name} (${newest.version})` : name });
