import type { ReviewItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { newId } from '../../lib/new-id.ts';
import { sayDay } from '../../lib/calendar.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { useSaidWords } from '../../ui/ledger/said-words.tsx';
import { acceptMany } from './accept-many.action.ts';
import { type DoubtTick, DoubtTicks } from './doubt-ticks.tsx';
import { tickName } from './item-key.ts';

interface AcceptManyProps {
  readonly programme: string;
  /** What the list is narrowed to, as in its address. */
  readonly kept: string;
  /** Doubts of more than one kind are listed, so each line tells its own. */
  readonly isMixed: boolean;
  readonly items: readonly ReviewItem[];
  readonly nameOf: (id: string) => string | undefined;
}

/** Doubts, a line each, to be ticked and accepted together for one reason; open where one kind was asked for. */
export function AcceptMany({ programme, kept, isMixed, items, nameOf }: AcceptManyProps) {
  const { review: said, entries } = useMessages();
  const t = useTranslations('review');
  const say = useSaidWords(nameOf);
  const kinds: Readonly<Record<string, string>> = entries.kinds;
  const tickOf = (item: ReviewItem): DoubtTick => ({
    name: tickName(item),
    decisionId: newId(),
    words: (
      <>
        <span className="font-semibold">{item.batch?.label ?? item.batch?.donorLabel ?? kinds[item.kind]}</span> {sayDay(item.day)} – {kinds[item.kind] ?? item.kind}: {say(item.said)}
        <span className="block text-sm text-ink-soft">{[isMixed && entries.flagShort[item.code], item.batch?.placeName, item.writtenBy].filter(Boolean).join(', ')}</span>
      </>
    ),
  });
  return (
    <details open={!isMixed} className="not-on-paper mb-8 rounded-lg border border-line bg-sheet p-5">
      <summary className="min-h-11 cursor-pointer content-center font-semibold">{t('many', { n: items.length })}</summary>
      <p className="mt-2 max-w-prose text-ink-soft">{said.manyLead}</p>
      <div className="mt-4">
        <ActionForm action={acceptMany.bind(null, programme, kept)} labels={{ note: said.fields.reason, items: said.manyItems }} send={said.manySend}>
          <DoubtTicks ticks={items.map(tickOf)} all={t('manyAll', { n: items.length })} />
          <TextField name="note" hint={said.hints.manyNote} />
        </ActionForm>
      </div>
    </details>
  );
}
