import { useTranslations } from 'next-intl';
import type { SentItem } from '../../lib/phone/outbox-item.ts';
import { pageOf } from '../../lib/page-address.ts';
import { sentLately } from '../../lib/phone/outbox.ts';
import { isDoubtful, markDoubtsSeen } from '../../lib/phone/doubts.ts';
import type { Store } from '../../lib/phone/store.ts';
import { useKept } from '../../lib/phone/use-kept.ts';
import { Flag } from '../../ui/flag.tsx';
import type { KnownHere } from './known-here.ts';
import { useSaid } from './use-meant.ts';
import { LINE, What } from './what.tsx';

/** So many of what was sent are shown. */
const SHOWN = 50;

/** What was sent lately: first what the books doubt, all of it, then the newest of the rest. */
export function SentList({ known }: { known: KnownHere }) {
  const t = useTranslations('outbox');
  const sent = useKept(sentAndSeen, NOTHING);
  const saidOf = useSaid(known);
  const doubtful = sent.filter(isDoubtful);
  const fine = sent.filter((item) => !isDoubtful(item)).slice(0, SHOWN);
  return (
    <>
      {doubtful.length > 0 && (
        <section aria-labelledby="doubtful" className="mt-8">
          <h2 id="doubtful" className="text-xl">{t('doubtful')}</h2>
          <p className="text-sm text-ink-soft">{t('doubtfulLead')}</p>
          <ul className="mt-2 grid gap-2">{doubtful.map((item) => <SentLine key={item.id} item={item} said={saidOf(item)} />)}</ul>
        </section>
      )}
      {fine.length > 0 && (
        <section aria-labelledby="sent" className="mt-8">
          <h2 id="sent" className="text-xl">{t('sent')}</h2>
          <p className="text-sm text-ink-soft">{t('sentLead')}</p>
          <ul className="mt-2 grid gap-2">{fine.map((item) => <SentLine key={item.id} item={item} said={saidOf(item)} />)}</ul>
        </section>
      )}
    </>
  );
}

function SentLine({ item, said }: { item: SentItem; said: string | undefined }) {
  const t = useTranslations('outbox');
  const flags = useTranslations('entries.flags');
  const status = { written: 'inBooks', already: 'already', waiting: 'waits', refused: 'refused' } as const;
  return (
    <li className={LINE}>
      <div className="flex flex-wrap items-center justify-between gap-2">
        <What item={item} at={item.sentAt} said={said} />
        <Flag tone={isDoubtful(item) ? 'look' : 'good'}>{t(status[item.status])}</Flag>
      </div>
      {[...new Map(item.flags.map((flag) => [flag.code, flag])).values()].map(({ code, n }) => <p key={code} className="mt-1">! {flags(code, { n: n ?? 0 })}</p>)}
      {item.status === 'waiting' && item.flags.length === 0 && <p className="mt-1">! {flags('waiting', { n: 0 })}</p>}
      <MendLink item={item} />
    </li>
  );
}

/** To where it can be put right, with a signal: what is sent has one. Notes book nothing, and what is a correction itself is mended where it was told. */
function MendLink({ item: { id, programme, about, work, status, ...item } }: { item: SentItem }) {
  const t = useTranslations('outbox');
  const saying = work.kind === 'entry' ? work.entry.saying : undefined;
  if (!saying || !('batchId' in saying) || saying.batchId === undefined || saying.kind === 'noted' || status === 'waiting' || item.flags.length === 0) return null;
  return <a href={pageOf(programme, 'batches', saying.batchId, 'entries', id, 'mend')} className="inline-flex min-h-14 items-center underline">{t('mend', { about })}</a>;
}

const NOTHING: readonly SentItem[] = [];

/** Shown is seen. */
async function sentAndSeen(store: Store): Promise<readonly SentItem[]> {
  const sent = await sentLately(store);
  await markDoubtsSeen(store, Date.now()).catch(() => undefined);
  return sent;
}
