import type { LabelLine } from '@sprigline/contract';
import { shownLabelCode } from '@sprigline/domain';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { MARK } from '../../ui/form/plate.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Species } from '../../ui/species.tsx';
import { Table } from '../../ui/table.tsx';
import { labelSays } from './label-says.ts';
import { SHEET_FORM } from './sheet-options.tsx';

const PAGES = { batch: 'batches', donorTree: 'donor-trees', place: 'places' } as const;

/** What will be printed, each with a box to leave it out. @param isTickable where their ids fit into an address */
export function LabelTable({ programme, lines, isTickable }: { programme: string; lines: readonly LabelLine[]; isTickable: boolean }) {
  const { labels: said, words } = useMessages();
  const t = useTranslations('labels');
  const what = (line: LabelLine) => {
    const { title, more } = labelSays({ ...line, taxon: null }, { t: t as never, stages: words.stage });
    return <><RowLink href={pageOf(programme, PAGES[line.is], line.id)}>{title ?? line.path.at(-1)}</RowLink> <span className="block text-sm text-ink-soft">{line.taxon && <Species name={line.taxon} />}{line.taxon && more.length > 0 && ', '}{more.join(', ')}</span></>;
  };
  return (
    <Table
      isStacked
      caption={t('lines', { n: lines.length })}
      rows={lines}
      keyOf={({ id }) => id}
      columns={[
        { head: said.lineColumns.what, cell: what },
        { head: said.lineColumns.code, cell: ({ code }) => (code === null ? <span className="text-ink-soft">{said.noCode}</span> : <strong className="whitespace-nowrap">{shownLabelCode(code)}</strong>) },
        ...(lines.some(({ is }) => is === 'batch') ? [{ head: said.lineColumns.where, cell: ({ path }: LabelLine) => path.join(' › ') }] : []),
        ...(isTickable && lines.some(({ code }) => code !== null) ? [{
          head: said.lineColumns.print,
          cell: ({ id, code, donorTree, path }: LabelLine) => code !== null && (
            <label className="-m-3 inline-flex min-h-14 min-w-14 cursor-pointer items-center justify-center">
              <input type="checkbox" form={SHEET_FORM} name="ids" value={id} defaultChecked className={MARK} />
              <span className="sr-only">{said.lineColumns.print} {shownLabelCode(code)} {donorTree ?? path.at(-1)}</span>
            </label>
          ),
        }] : []),
      ]}
    />
  );
}
