import type { PlantRequest, Supply } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { overTheMost } from './over-the-most.ts';

interface SetAsideTableProps {
  readonly programme: string;
  readonly request: PlantRequest;
  readonly supplies: readonly Supply[];
}

/** What is set aside, in walking order, with what has died since and what cannot go. */
export function SetAsideTable({ programme, request, supplies }: SetAsideTableProps) {
  const said = useMessages().requests;
  const t = useTranslations('requests');
  const own = supplies.filter(({ reserved }) => reserved > 0);
  const n = own.reduce((sum, { covered }) => sum + covered, 0);
  const donors = new Set(own.flatMap(({ donorTree }) => donorTree?.id ?? [])).size;
  if (own.length === 0) return <p className="text-ink-soft">{said.none}</p>;
  return (
    <div className="grid gap-4">
      <p>
        {t('sum', { n, asked: request.plants, donors })} {n < request.plants && <Flag tone="look">{t('short', { n: request.plants - n })}</Flag>}
      </p>
      {overTheMost(own, request.mostPerDonor).map(({ tree, taken, most }) => <p key={tree}><Flag tone="look">{t('overMost', { tree, n: taken, most })}</Flag></p>)}
      <Table
        isStacked
        caption={said.reserved}
        isCaptionHidden
        rows={own}
        keyOf={({ batchId }) => batchId}
        columns={[
          { head: said.columns.label, cell: ({ batchId, label }) => <Tag href={pageOf(programme, 'batches', batchId)}>{label ?? said.untold}</Tag> },
          { head: said.columns.n, isNumber: true, cell: ({ covered, reserved }) => (covered < reserved ? <Flag tone="grave">{t('gap', { covered, n: reserved })}</Flag> : reserved) },
          { head: said.columns.donorTree, cell: ({ donorTree }) => (donorTree ? <Tag href={pageOf(programme, 'donor-trees', donorTree.id)}>{donorTree.label}</Tag> : said.unknownTree) },
          { head: said.columns.stand, cell: ({ stand }) => stand?.name },
          { head: said.columns.place, cell: ({ path, held }) => <>{path.join(' › ')} {held && <Flag tone="grave">{said.held}</Flag>}</> },
        ]}
      />
    </div>
  );
}
