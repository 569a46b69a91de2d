import type { LabelRoll } from '@sprigline/contract';
import { shownLabelCode } from '@sprigline/domain';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Table } from '../../ui/table.tsx';

const PAGES = { batch: 'batches', donorTree: 'donor-trees', place: 'places' } as const;

/** The codes along a roll, and what became of each. */
export function RollTable({ programme, roll }: { programme: string; roll: LabelRoll }) {
  const { labels: said } = useMessages();
  return (
    <Table
      caption={roll.name}
      isCaptionHidden
      rows={roll.codes}
      keyOf={({ code }) => code}
      columns={[
        { head: said.codeColumns.code, cell: ({ code }) => <span className="whitespace-nowrap">{shownLabelCode(code)}</span> },
        { head: said.codeColumns.number, isNumber: true, cell: ({ number }) => number },
        { head: said.codeColumns.on, cell: ({ code, on }) => (on === null ? <>{said.unclaimed} <ClaimLink programme={programme} code={code} /></> : <RowLink href={pageOf(programme, PAGES[on.is], on.id)}>{said.on[on.is]}</RowLink>) },
      ]}
    />
  );
}

/** For whoever has the roll on the screen and the label in the hand. */
function ClaimLink({ programme, code }: { programme: string; code: string }) {
  const t = useTranslations('labels');
  return (
    <span className="not-on-paper">
      <RowLink href={`${pageOf(programme, 'scan', 'claim')}?${new URLSearchParams({ code })}`}>{t.rich('claim', { code: shownLabelCode(code), hidden: (words) => <span className="sr-only">{words}</span> })}</RowLink>
    </span>
  );
}
