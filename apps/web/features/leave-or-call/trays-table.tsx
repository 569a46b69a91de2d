import type { WaitingTray } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { TrayNotes } from './tray-notes.tsx';
import { plantsSaid, useTrayWords } from './tray-words.ts';

/** What waiting would bring, tray by tray, what a month of bench brings most first. */
export function TraysTable({ programme, trays }: { programme: string; trays: readonly WaitingTray[] }) {
  const { leaveOrCall: said } = useMessages();
  const t = useTranslations('leaveOrCall');
  const { number } = useFormatter();
  const words = useTrayWords();
  return (
    <Table
      isStacked
      caption={said.title}
      isCaptionHidden
      rows={trays}
      keyOf={({ batchId }) => batchId}
      columns={[
        {
          head: said.tray,
          cell: (tray) => (
            <span className="block min-w-40">
              <Tag href={pageOf(programme, 'batches', tray.batchId)}>{tray.label ?? tray.place.name}</Tag>
              <span className="block text-sm font-normal text-ink-soft">{[tray.donorTree, tray.place.name].filter(Boolean).join(', ')}</span>
            </span>
          ),
        },
        { head: said.green, isNumber: true, cell: ({ green }) => number(green) },
        { head: said.waited, isNumber: true, cell: ({ days }) => t('weeks', { n: Math.floor(days / 7) }) },
        { head: said.chance, isNumber: true, cell: ({ chance }) => (chance === null ? '' : words.chance(chance)) },
        {
          head: said.perMonth, isNumber: true,
          cell: (tray) => (tray.perMonth === null ? '' : (
            <>
              <strong>{plantsSaid(tray.perMonth)}</strong>
              <span className="block text-sm text-ink-soft">{words.inAll(tray)}</span>
              <span className="block text-sm text-ink-soft">{words.soon(tray)}</span>
            </>
          )),
        },
        { head: said.note, cell: (tray) => <span className="block min-w-52 text-sm"><TrayNotes tray={tray} /></span> },
      ]}
    />
  );
}
