import type { RootingCurve } from '@sprigline/contract';
import { useFormatter, useMessages } from 'next-intl';
import { percent, percentRange } from '../../lib/percent.ts';
import { Table } from '../../ui/table.tsx';

interface Row {
  readonly curve: RootingCurve;
  readonly step: RootingCurve['steps'][number];
}

/** Table twin of the curves: a line for each week in which something was seen. */
export function RootingTable({ curves, isNamed }: { curves: readonly RootingCurve[]; isNamed: boolean }) {
  const { timeToRoot: { table: said } } = useMessages();
  const { number } = useFormatter();
  const rows = curves.flatMap((curve) => curve.steps.map((step): Row => ({ curve, step })));
  return (
    <Table
      caption={said.title}
      isCaptionHidden
      rows={rows}
      keyOf={({ curve, step }) => `${curve.key} ${step.week}`}
      columns={[
        ...(isNamed ? [{ head: said.group, cell: ({ curve }: Row) => curve.name }] : []),
        { head: said.week, isNumber: true, cell: ({ step: { week } }) => number(week) },
        { head: said.since, isNumber: true, cell: ({ step: { since } }) => number(since) },
        { head: said.rooted, isNumber: true, cell: ({ step: { rooted } }) => percent(rooted) },
        { head: said.range, isNumber: true, cell: ({ step: { lower, upper } }) => (lower !== undefined && upper !== undefined ? percentRange({ lower, upper }) : '') },
        { head: said.lost, isNumber: true, cell: ({ step: { lost } }) => percent(lost) },
      ]}
    />
  );
}
