import { useTranslations } from 'next-intl';
import type { BooksAhead } from '../../lib/phone/books.ts';
import { Flag } from '../../ui/flag.tsx';
import { useMovementWords } from '../../ui/ledger/movement-words.tsx';

/** What the books will make of an entry, and what a coordinator will be shown of it. */
export function BooksLine({ ahead, entryId }: { ahead: BooksAhead | undefined; entryId: string }) {
  const t = useTranslations('act');
  const flags = useTranslations('entries.flags');
  const say = useMovementWords();
  if (!ahead) return null;
  const movements = ahead.after.movements.filter((movement) => movement.entryId === entryId);
  const raised = ahead.after.flags.filter((flag) => flag.entryId === entryId);
  return (
    <div role="status" className="border-l-4 border-lichen-deep pl-3">
      <strong className="text-lg tabular-nums">{t('ahead', { before: ahead.before.balance, after: ahead.after.balance })}</strong>
      <ul>{movements.map((movement, at) => <li key={at}>{say(movement)}</li>)}</ul>
      {raised.map(({ code, n }) => <p key={code} className="mt-1"><Flag tone="look">{t('toReview')}</Flag> {flags(code, { n: n ?? 0 })}</p>)}
    </div>
  );
}
