import { NextIntlClientProvider, useMessages } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { type Choice, ChoiceField } from '../../ui/form/choice-field.tsx';
import { PlainSelect } from '../../ui/form/plain-select.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { giveLabel, type LabelledField } from './give-label.action.ts';
import type { Claim } from './claim-ways.tsx';

/** So many are still looked through by eye; more are a list to open. */
const IN_SIGHT = 12;

interface ClaimFormProps {
  readonly programme: string;
  readonly code: string;
  readonly on: Claim;
  /** First where, for what there are too many of: a place for a batch, a stand for a donor tree. */
  readonly where?: { readonly name: 'placeId' | 'standId'; readonly chosen: string | undefined; readonly choices: readonly Choice[] };
  /** Once it is known where. */
  readonly things?: readonly Choice[] | undefined;
}

const FIELD: Readonly<Record<Claim, LabelledField>> = { batch: 'batchId', donorTree: 'donorTreeId', place: 'placeId' };

/** Where it is, then which one. The first is a plain form that asks for the page again. */
export function ClaimForm({ programme, code, on, where, things }: ClaimFormProps) {
  const { ui, scan: { claim: said } } = useMessages();
  const field = FIELD[on];
  return (
    <div className="grid gap-8">
      {where && (
        <form method="get" className="flex max-w-prose flex-wrap items-end gap-3">
          <input type="hidden" name="code" value={code} />
          <input type="hidden" name="on" value={on} />
          <div className="min-w-0 grow">
            <PlainSelect name={where.name} label={said[where.name]} chosen={where.chosen} options={[{ id: '', name: ui.chooseOne }, ...where.choices.map(({ value, words }) => ({ id: value, name: words }))]} />
          </div>
          <button className={buttonClass(things ? 'quiet' : 'main')}>{said.show}</button>
        </form>
      )}
      {things && (things.length === 0 ? <p role="status">{said.none[on]}</p> : (
        <NextIntlClientProvider messages={{ ui }}>
          <ActionForm action={giveLabel.bind(null, programme, code, field)} labels={{ [field]: said.which[on] }} send={said.send}>
            {things.length <= IN_SIGHT ? <RadioField name={field} choices={things} /> : <ChoiceField name={field} choices={things} />}
          </ActionForm>
        </NextIntlClientProvider>
      ))}
    </div>
  );
}
