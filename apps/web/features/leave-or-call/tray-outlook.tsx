import type { LeaveOrCall } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Caution } from '../../ui/caution.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Grounds } from './grounds.tsx';
import { TrayNotes } from './tray-notes.tsx';
import { useTrayWords } from './tray-words.ts';

/** On the page of a tray: what waiting would bring it. Nothing where nothing waits. */
export function TrayOutlook({ programme, reading: { trays: [tray], grounds } }: { programme: string; reading: LeaveOrCall }) {
  const { leaveOrCall: said } = useMessages();
  const t = useTranslations('leaveOrCall');
  const words = useTrayWords();
  if (!tray) return null;
  return (
    <Section heading={said.forTray}>
      {tray.chance !== null && <p className="max-w-prose text-lg">{t('says', { green: tray.green, chance: words.chance(tray.chance), inAll: words.inAll(tray), soon: words.soon(tray) })}</p>}
      <p className="mt-2 mb-4 max-w-prose"><TrayNotes tray={tray} /></p>
      <Caution>{said.caution}</Caution>
      <Grounds grounds={grounds} />
      <RowLink href={pageOf(programme, 'readings', 'leave-or-call')}>{said.wholeList}</RowLink>
    </Section>
  );
}
