import { useTranslations } from 'next-intl';
import { sayDay, today } from '../../lib/calendar.ts';
import { sendOnceMore } from '../../lib/phone/decide.ts';
import { announce } from '../../lib/phone/news.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import type { KnownHere } from './known-here.ts';
import { useMeant } from './use-meant.ts';
import { LINE, What } from './what.tsx';

/** What was not taken and then given to a coordinator or put aside: it stays readable on this phone. */
export function DecidedList({ items, known }: { items: readonly OutboxItem[]; known: KnownHere }) {
  const t = useTranslations('outbox');
  if (items.length === 0) return null;
  return (
    <section aria-labelledby="decided" className="mt-8">
      <h2 id="decided" className="text-xl">{t('decided')}</h2>
      <p className="text-sm text-ink-soft">{t('decidedLead')}</p>
      <ul className="mt-2 grid gap-2">{items.map((item) => <DecidedLine key={item.id} item={item} known={known} />)}</ul>
    </section>
  );
}

function DecidedLine({ item, known }: { item: OutboxItem; known: KnownHere }) {
  const t = useTranslations('outbox');
  const { what } = useMeant(known)(item);
  const { decided } = item;
  if (!decided) return null;
  const day = sayDay(today(Intl.DateTimeFormat().resolvedOptions().timeZone, new Date(decided.at)));
  const note = decided.noteId === undefined ? undefined : known.own.get(decided.noteId);
  const takeUp = async (): Promise<void> => {
    await sendOnceMore(await theStore(), item.at);
    announce();
  };
  return (
    <li className={LINE}>
      <What item={item} at={item.keptAt} />
      <p className="wrap-anywhere">{what}</p>
      {decided.how === 'given'
        ? <p className="text-sm font-semibold">{t('givenOn', { day })} {note && t(stateOf(note))}</p>
        : (
          <>
            <p className="text-sm font-semibold">{t('asideOn', { day })} <span className="font-normal">“{decided.reason}”</span></p>
            <button type="button" onClick={() => void takeUp().catch(() => undefined)} className={`${buttonClass('quiet')} mt-2`}>{t('tryAgain')}</button>
          </>
        )}
    </li>
  );
}

function stateOf(note: NonNullable<ReturnType<KnownHere['own']['get']>>): 'noteArrived' | 'noteRefused' | 'noteWaits' {
  if ('status' in note) return 'noteArrived';
  return note.refusal ? 'noteRefused' : 'noteWaits';
}
