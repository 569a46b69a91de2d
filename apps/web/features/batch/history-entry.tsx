import type { HistoryItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Flag } from '../../ui/flag.tsx';
import { useMovementWords } from '../../ui/ledger/movement-words.tsx';
import { useSaidWords } from '../../ui/ledger/said-words.tsx';
import { Corrections } from './corrections.tsx';

interface HistoryEntryProps {
  readonly programme: string;
  readonly batchId: string;
  readonly item: HistoryItem;
  readonly zone: string;
  readonly nameOf: (id: string) => string | undefined;
}

/** One entry: what it says now, what the books made of it, who saw and wrote it, and how it came to say that. */
export function HistoryEntry({ programme, batchId, item, zone, nameOf }: HistoryEntryProps) {
  const { entries } = useMessages();
  const t = useTranslations('batches');
  const flags = useTranslations('entries.flags');
  const say = useSaidWords(nameOf);
  const booked = useMovementWords();
  const { id, kind, now, note, movements, corrections, mayMend } = item;
  const minute = (now ?? item).minute;
  const kinds: Readonly<Record<string, string>> = entries.kinds;
  const to = (way: string) => pageOf(programme, 'batches', batchId, 'entries', id, way);

  return (
    <li id={`entry-${id}`} className="grid gap-x-6 gap-y-1 border-b border-line py-4 sm:grid-cols-[8.5rem_1fr_auto]">
      <p className="text-ink-soft sm:text-right">
        {sayDay((now ?? item).observedOn)} {minute !== null && <span className="sm:block">{t('minute', { time: clock(minute) })}</span>}
      </p>
      <div className="min-w-0">
        <p className={now ? '' : 'line-through decoration-2'}>
          <strong>{kinds[kind] ?? kind}</strong>: {say(now?.said ?? item.said)}
        </p>
        {!now && <Flag tone="look">{t('withdrawnMark')}</Flag>}
        {movements.length > 0 && <p className="text-ink-soft">{t('byBooks', { what: movements.map(booked).join('; ') })}</p>}
        {note && <p className="max-w-prose italic">“{note}”</p>}
        {item.flags.map(({ code, n }) => <p key={code} className="text-sm"><Flag tone="look">{entries.flagShort[code]}</Flag> {flags(code, { n: n ?? 0 })}</p>)}
        <p className="text-sm text-ink-soft"><Who item={item} zone={zone} /></p>
        {corrections.length > 0 && <Corrections item={item} say={say} zone={zone} />}
      </div>
      {mayMend && now && (
        <div className="not-on-paper flex gap-2 sm:flex-col">
          <ButtonLink look="quiet" href={to('mend')}>{t('mend')}</ButtonLink>
        </div>
      )}
    </li>
  );
}

/** Who saw it, who wrote it, when it arrived and through which door. */
function Who({ item: { seenBy, writtenBy, receivedAt, observedOn, door }, zone }: { item: HistoryItem; zone: string }) {
  const { entries } = useMessages();
  const t = useTranslations('batches');
  const days = Math.round((Date.parse(receivedAt.slice(0, 10)) - Date.parse(observedOn)) / 86_400_000);
  return [
    seenBy && seenBy !== writtenBy && t('seenBy', { name: seenBy }),
    writtenBy && t('writtenBy', { name: writtenBy }),
    sayMoment(receivedAt, zone),
    days > 1 && t('late', { n: days }),
    entries.doors[door],
  ].filter(Boolean).join(' · ');
}

const clock = (minute: number): string => `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
