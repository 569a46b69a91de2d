import type { ReviewItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { newId } from '../../lib/new-id.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Flag } from '../../ui/flag.tsx';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { useSaidWords } from '../../ui/ledger/said-words.tsx';
import { Tag } from '../../ui/tag.tsx';
import { DecideForm } from './decide-form.tsx';
import { decide } from './decide.action.ts';
import { itemKey } from './item-key.ts';
import { SoFar } from './so-far.tsx';

export interface ReviewCardProps {
  readonly programme: string;
  /** What the list is narrowed to, as in its address. */
  readonly kept: string;
  readonly item: ReviewItem;
  readonly zone: string;
  /** The form with all decisions is open on one card at a time. */
  readonly isOpen: boolean;
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly nameOf: (id: string) => string | undefined;
}

/** One doubt: what was said, why it is doubtful, what usually helps, and the decision. */
export function ReviewCard({ programme, kept, item, zone, isOpen, people, nameOf }: ReviewCardProps) {
  const { review: said, entries } = useMessages();
  const t = useTranslations('review');
  const flags = useTranslations('entries.flags');
  const say = useSaidWords(nameOf);
  const { entryId, code, n, batch, kind, day, seenBy, writtenBy, receivedAt, note, waitsFor } = item;
  const kinds: Readonly<Record<string, string>> = entries.kinds;
  const flag = { id: newId(), entryId, batchId: batch?.id, code };
  const who = [seenBy && seenBy !== writtenBy && t('seenBy', { name: seenBy }), writtenBy && t('writtenBy', { name: writtenBy }), t('arrived', { moment: sayMoment(receivedAt, zone) })];

  return (
    <article id={itemKey(item)} aria-label={entries.flagShort[code]} className="card grid gap-3 rounded-lg border border-line bg-sheet p-5">
      <div className="flex flex-wrap items-center gap-x-3 gap-y-1">
        <Flag tone="look">{entries.flagShort[code]}</Flag>
        {batch && <Tag href={pageOf(programme, 'batches', batch.id)}>{batch.label ?? `…${batch.id.slice(-6)}`}</Tag>}
        <span className="text-sm text-ink-soft">{batch && [batch.donorLabel, batch.placeName].filter(Boolean).join(', ')}</span>
      </div>
      <p className="max-w-prose">{flags(code, { n: n ?? 0 })} {waitsFor.length > 0 && t('waitsFor', { n: waitsFor.length })}</p>
      <div className="border-l-4 border-lichen-deep pl-3">
        <p className="whitespace-pre-line">{sayDay(day)} – <strong>{kinds[kind] ?? kind}</strong>: {say(item.said)}</p>
        {note && <p className="whitespace-pre-line italic">“{note}”</p>}
        <p className="text-sm text-ink-soft">{who.filter(Boolean).join(' · ')}</p>
      </div>
      <p className="max-w-prose text-sm text-ink-soft">{said.todo[code]}</p>
      {code === 'told-after-all' && item.decisions.length > 0 && <p className="text-sm">{said.withNote}</p>}
      <SoFar decisions={item.decisions} zone={zone} />
      {isOpen ? (
        <DecideForm programme={programme} kept={kept} flag={flag} people={people} askable={item.canBeAsked ? (writtenBy ?? undefined) : undefined} />
      ) : (
        <div className="flex flex-wrap items-start gap-3">
          <ActionForm action={decide.bind(null, programme, kept, flag)} send={code === 'not-booked' ? said.done : said.accept} />
          {batch && code !== 'not-booked' && kind !== 'withdrawn' && kind !== 'replaced' && <ButtonLink look="quiet" href={pageOf(programme, 'batches', batch.id, 'entries', entryId, 'mend')}>{said.mendFirst}</ButtonLink>}
          <ButtonLink look="quiet" href={`?${new URLSearchParams([...new URLSearchParams(kept), ['decide', itemKey(item)]])}#${itemKey(item)}`}>{said.decide}</ButtonLink>
        </div>
      )}
    </article>
  );
}
