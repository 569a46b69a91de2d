import { useTranslations } from 'next-intl';
import { ago } from '../../lib/ago.ts';
import type { OutboxItem, SentItem } from '../../lib/phone/outbox-item.ts';
import { workKind } from './work-kind.ts';

/** The card of one thing in the outbox. */
export const LINE = 'rounded-md border border-line bg-sheet px-3 py-2';

interface WhatProps {
  readonly item: OutboxItem | SentItem;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** What an entry says, with its numbers: nobody can judge "T104 counted". */
  readonly said?: string | undefined;
}

/** What something in the outbox is, of what, by whom and when. */
export function What({ item: { about, work, author, was = [] }, at, said }: WhatProps) {
  const t = useTranslations('outbox');
  const field = useTranslations('field');
  const kinds = useTranslations('entries.kinds');
  const what = said ?? (work.kind === 'entry' ? kinds(work.entry.saying.kind) : t(`kinds.${workKind(work)}`));
  return (
    <span className="min-w-0 wrap-anywhere">
      <strong>{about}</strong> {what}
      {was.length > 0 && <span className="block text-sm">{t('was', { labels: was.join(', ') })}</span>}
      <span className="block text-sm text-ink-soft">{t('by', { name: author.name, when: field('ago', { ...ago(at, Date.now()) }) })}</span>
    </span>
  );
}
