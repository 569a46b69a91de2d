import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom, choicesOf } from '../../ui/form/choices.ts';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { type Decided, decide } from './decide.action.ts';

interface DecideFormProps {
  readonly programme: string;
  /** What the list is narrowed to, as in its address. */
  readonly kept: string;
  readonly flag: Decided;
  readonly people: readonly { readonly id: string; readonly name: string }[];
  /** Whoever wrote it, if a question reaches them. */
  readonly askable: string | undefined;
}

/** All that can be decided about one doubt. */
export function DecideForm({ programme, kept, flag, people, askable }: DecideFormProps) {
  const said = useMessages().review;
  const t = useTranslations('review');
  const { accepted, mended, assigned } = said.choices;
  const decidable = flag.code === 'not-booked' ? { accepted: said.choiceDone, assigned } : { accepted, mended, assigned };
  const choices = askable === undefined ? decidable : { ...decidable, asked: t('askName', { name: askable }) };
  return (
    <div className="grid gap-3 border-t border-line pt-4">
      <ActionForm action={decide.bind(null, programme, kept, flag)} labels={said.fields} send={said.send}>
        <RadioField name="decision" choices={choicesFrom(choices)} value={askable === undefined ? 'assigned' : 'asked'} hint={askable === undefined && said.cannotAsk} />
        <ChoiceField name="assignedTo" isOptional choices={choicesOf(people)} hint={said.hints.assignedTo} />
        <ProseField name="note" isOptional rows={2} hint={said.hints.note} />
      </ActionForm>
      <RowLink href={`${pageOf(programme, 'review')}?${kept}`}>{said.close}</RowLink>
    </div>
  );
}
