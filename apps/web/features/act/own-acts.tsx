import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { isAbout } from '../../lib/phone/books.ts';
import type { OwnItem } from '../../lib/phone/use-own.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Flag } from '../../ui/flag.tsx';
import type { FieldPackNow } from './use-field-pack.ts';

/** Counts are told, and told otherwise, on the walk. */
const KINDS = ['stuck', 'lifted', 'potted', 'planted', 'moved', 'called', 'thrownOut', 'noted'] as const;

/** What was done to a batch on this phone, where it is, and how to take it back. */
export function OwnActs({ batchId, found: { own }, undo }: { batchId: string; found: FieldPackNow; undo: (entry: EntryToSend) => void }) {
  const t = useTranslations('act');
  const withdrawn = new Set(own.flatMap(({ work }) => (work.kind === 'entry' && work.entry.saying.kind === 'withdrawn' ? [work.entry.saying.entryId] : [])));
  const acts = own.flatMap((item) => (item.work.kind === 'entry' && !withdrawn.has(item.id) && isOurs(item.work.entry, batchId) ? [{ item, entry: item.work.entry }] : []));
  if (acts.length === 0) return null;
  return (
    <section aria-labelledby="own-acts" className="mt-4">
      <h2 id="own-acts" className="text-lg">{t('yours')}</h2>
      <ul className="mt-2 grid gap-2">
        {acts.map(({ item, entry }) => (
          <li key={item.id} className="flex flex-wrap items-center justify-between gap-2 rounded-md border border-line bg-sheet px-3 py-2">
            <span className="min-w-0">
              <SaidHere entry={entry} /> <span className="text-sm text-ink-soft">{sayDay(entry.observedOn)}</span> <Where item={item} />
            </span>
            <button type="button" onClick={() => undo(entry)} className={buttonClass('quiet')}>{t('takeBack')}</button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function isOurs(entry: EntryToSend, batchId: string): boolean {
  const { saying } = entry;
  return KINDS.some((kind) => kind === saying.kind) && !(saying.kind === 'noted' && saying.text === undefined) && isAbout(entry, batchId);
}

/** In a few words: "12 potted up". */
export function SaidHere({ entry: { saying } }: { entry: EntryToSend }) {
  const t = useTranslations('act');
  const kinds = useTranslations('entries.kinds');
  if (saying.kind === 'noted') return <span className="wrap-anywhere">{saying.text}</span>;
  const n = 'n' in saying ? saying.n : undefined;
  return <strong className="tabular-nums">{n === undefined ? t('allOf', { what: kinds(saying.kind) }) : t('some', { n, what: kinds(saying.kind) })}</strong>;
}

/** Not taken, still only here, or in the books. */
export function Where({ item }: { item: OwnItem }) {
  const t = useTranslations('act');
  if ('status' in item) return <Flag tone="good">{t('inBooks')}</Flag>;
  return item.refusal ? <Flag tone="grave">{t('refused')}</Flag> : <Flag tone="look">{t('onPhone')}</Flag>;
}
