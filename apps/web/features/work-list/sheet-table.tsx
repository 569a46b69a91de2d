import type { WorkList } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Species } from '../../ui/species.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { boxesOf, IS_A_TICK, IS_FOR_WORDS, lineWords } from './line-words.ts';
import { sheetWords } from './sheet-words.ts';

/** The lines of a sheet; the boxes to write into are only there on paper. */
export function SheetTable({ programme, list }: { programme: string; list: WorkList }) {
  const t = useTranslations('workLists');
  const words = sheetWords(t);
  const rows = list.lines.map((line) => ({ ...line, said: lineWords(line, words) }));
  return (
    <Table
      caption={t(`kinds.${list.kind}`)}
      isCaptionHidden
      rows={rows}
      keyOf={({ number }) => String(number)}
      columns={[
        { head: t('sheet.number'), isNumber: true, cell: ({ number }) => number },
        { head: t('sheet.where'), cell: ({ said }) => <>{said.place}{said.rows && <span className="block font-normal text-ink-soft">{said.rows}</span>}</> },
        {
          head: t('sheet.batch'),
          cell: ({ said, batch }) => (
            <>
              <Tag href={pageOf(programme, 'batches', batch.id)}>{said.label}</Tag>
              <span className="block">{said.from}</span>
              {said.species && <span className="block text-sm text-ink-soft"><Species name={said.species} /></span>}
            </>
          ),
        },
        {
          head: t('sheet.there'),
          cell: ({ said, typed }) => (
            <>
              {said.there}
              {said.more.map((more) => <span key={more} className="block text-sm text-ink-soft">{more}</span>)}
              {said.held && <strong className="block text-sm">{said.held}</strong>}
              {typed && <span className="not-on-paper block text-sm font-semibold text-juniper">✓ {t('sheet.typed')}</span>}
            </>
          ),
        },
        ...boxesOf(list.kind).map((box) => ({ head: <span className="on-paper">{t(`boxes.${box}`)}</span>, cell: () => <span className={`on-paper ${IS_A_TICK.has(box) ? 'paper-tick' : IS_FOR_WORDS.has(box) ? 'paper-line' : 'paper-box'}`} /> })),
      ]}
    />
  );
}
