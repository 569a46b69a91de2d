import type { ReviewItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { newId } from '../../lib/new-id.ts';
import { sayDay } from '../../lib/calendar.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { useSaidWords } from '../../ui/ledger/said-words.tsx';
import { acceptMany } from './accept-many.action.ts';
import { itemKey, tickOf } from './item-key.ts';

interface AcceptManyProps {
  readonly programme: string;
  readonly code: string | undefined;
  readonly items: readonly ReviewItem[];
  readonly nameOf: (id: string) => string | undefined;
}

/** Doubts of one kind, a line each, to be ticked and accepted together for one reason. */
export function AcceptMany({ programme, code, items, nameOf }: AcceptManyProps) {
  const { review: said, entries } = useMessages();
  const t = useTranslations('review');
  const say = useSaidWords(nameOf);
  const kinds: Readonly<Record<string, string>> = entries.kinds;
  return (
    <details className="not-on-paper mb-8 rounded-lg border border-line bg-sheet p-5">
      <summary className="min-h-11 cursor-pointer content-center font-semibold">{t('many', { n: items.length })}</summary>
      <p className="mt-2 max-w-prose text-ink-soft">{said.manyLead}</p>
      <div className="mt-4">
        <ActionForm action={acceptMany.bind(null, programme, code)} labels={{ note: said.fields.note, items: said.manyItems }} send={said.manySend}>
          <fieldset id="items" className="w-full">
            <legend className="font-semibold">{said.manyItems}</legend>
            <ul className="mt-2 divide-y divide-line">
              {items.map((item) => (
                <li key={itemKey(item)}>
                  <label className="flex min-h-14 items-center gap-4 py-2">
                    <input type="checkbox" name="doubts" value={tickOf(newId(), item)} className="size-6 shrink-0 accent-juniper" />
                    <span>
                      <span className="font-semibold">{item.batch?.label ?? item.batch?.donorLabel ?? kinds[item.kind]}</span> {sayDay(item.day)} – {kinds[item.kind] ?? item.kind}: {say(item.said)}
                      <span className="block text-sm text-ink-soft">{[item.batch?.placeName, item.writtenBy].filter(Boolean).join(', ')}</span>
                    </span>
                  </label>
                </li>
              ))}
            </ul>
          </fieldset>
          <TextField name="note" hint={said.hints.manyNote} />
        </ActionForm>
      </div>
    </details>
  );
}
