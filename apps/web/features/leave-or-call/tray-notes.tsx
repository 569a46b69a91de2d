import type { WaitingTray } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** Beside the figures of a tray: whether there is anything to see yet, and how much they rest on. */
export function TrayNotes({ tray }: { tray: WaitingTray }) {
  const { leaveOrCall: said } = useMessages();
  const t = useTranslations('leaveOrCall');
  return (
    <>
      {tray.handsOffUntil && <span className="block font-semibold">{t('handsOff', { day: sayDay(tray.handsOffUntil) })}</span>}
      {tray.state === 'beyond-history' && <span className="block">{said.beyond}</span>}
      {tray.state === 'mostly-prior' && <span className="block">{said.prior}</span>}
      <span className="block text-ink-soft">{[tray.state === 'beyond-history' ? '' : t('asLong', { n: tray.watchedAsLong }), t('verdict', { day: sayDay(tray.verdictOn) })].filter(Boolean).join(' ')}</span>
    </>
  );
}
