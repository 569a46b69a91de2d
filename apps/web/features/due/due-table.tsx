import type { DueItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { sayDay } from '../../lib/calendar.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { useThing, useWhy, wayTo } from './due-words.ts';
import { When } from './when.tsx';

interface DueTableProps {
  readonly programme: string;
  readonly today: string;
  readonly items: readonly DueItem[];
  /** What a place lies in, in words: every house has a bench 1. */
  readonly liesIn: (placeId: string) => string;
  /** The desk may put off. */
  readonly isDesk: boolean;
}

/** What is due, one thing a row, with the way straight into the act. */
export function DueTable({ programme, today, items, liesIn, isDesk }: DueTableProps) {
  const { due: said } = useMessages();
  const t = useTranslations('due');
  const [why, thing] = [useWhy(), useThing()];
  return (
    <Table
      isStacked
      caption={said.title}
      isCaptionHidden
      rows={items}
      keyOf={({ key }) => key}
      columns={[
        { head: said.what, cell: (item) => <span className="block min-w-36">{said.kinds[item.kind]}</span> },
        {
          head: said.place,
          cell: (item) => (
            <span className="block min-w-40">
              {item.batch ? <Tag href={pageOf(programme, 'batches', item.batch.id)}>{thing(item)}</Tag> : <RowLink href={pageOf(programme, item.kind === 'siteCheck' ? 'sites' : 'places', item.place.id)}>{thing(item)}</RowLink>}
              <span className="block text-sm text-ink-soft">
                {item.batch ? [item.batch.donorTree, [liesIn(item.place.id), item.place.name].filter(Boolean).join(' › '), t('plants', { n: item.plants })].filter(Boolean).join(', ') : [liesIn(item.place.id), t('batches', { n: item.batches, plants: item.plants })].filter(Boolean).join(', ')}
              </span>
            </span>
          ),
        },
        {
          head: said.by,
          cell: (item) => (
            <span className="block min-w-52 text-sm">
              <When day={item.day} today={today} />
              <span className="block text-ink-soft">{why(item)}</span>
              {item.putOff && <span className="block text-ink-soft italic">{t('wasPutOff', { until: sayDay(item.putOff.until), by: item.putOff.by, reason: item.putOff.reason })}</span>}
            </span>
          ),
        },
        {
          head: <span className="not-on-paper">{said.act}</span>,
          cell: (item) => (
            <span className="not-on-paper flex flex-col items-start whitespace-nowrap">
              <RowLink href={wayTo(programme, item)}>{said.acts[item.kind]}</RowLink>
              {isDesk && <RowLink href={`${pageOf(programme, 'due', 'put-off')}?${new URLSearchParams({ thing: item.key, on: item.dueOn, at: item.place.id })}`}>{said.putOff}</RowLink>}
            </span>
          ),
        },
      ]}
    />
  );
}
