import { useTranslations } from 'next-intl';
import { today } from '../../lib/calendar.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { newId } from '../../lib/new-id.ts';
import { give } from '../../lib/phone/decide.ts';
import { authorHere } from '../../lib/phone/device.ts';
import { announce } from '../../lib/phone/news.ts';
import type { OutboxItem, ToKeep } from '../../lib/phone/outbox-item.ts';
import { theStore } from '../../lib/phone/store.ts';
import type { KnownHere } from './known-here.ts';
import { noteOf, withdrawalOf } from './note-for-coordinator.ts';
import { useMeant } from './use-meant.ts';

/** Gives what was refused to a coordinator, as a note with all that was meant. Resolves once both are on disk. @param why in a person's words */
export function useGive(known: KnownHere): (item: OutboxItem, why: string) => Promise<void> {
  const t = useTranslations('outbox.note');
  const meantBy = useMeant(known);
  return async (item, why) => {
    const store = await theStore();
    const { what, about, when, who, note } = meantBy(item);
    const text = [
      t('what', { what }), t('about', { about }), when && t('when', { when }), who.endsWith('.') ? who : `${who}.`, note && t('note', { note }), t('why', { why }),
      item.work.kind === 'photo' && t('picture'),
    ].filter(Boolean).join('\n');
    const now = Date.now();
    const zone = known.zones.get(item.programme) ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
    const entry = noteOf(item, { id: newId(), text, cutWords: t('cut'), observedOn: today(zone), writtenAt: new Date(now).toISOString() }, known);
    // Whoever gives it is here; whoever logged it may have left, and stands in the words.
    const author = await authorHere(store, item.programme).catch(() => item.author);
    const kept = (one: EntryToSend): ToKeep => ({ id: one.id, programme: item.programme, author, about: item.about, work: { kind: 'entry', entry: one } });
    await give(store, item.at, kept(entry), kept(withdrawalOf(entry, newId(), t('calledBack'))), now);
    announce();
  };
}
