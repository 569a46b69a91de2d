import type { Treatment } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Table } from '../../ui/table.tsx';
import { treatmentWords } from './treatment-words.ts';

/** What was done, the first one first. */
export function TreatmentTable({ title, treatments }: { title: string; treatments: readonly Treatment[] }) {
  const { treatments: said, entries } = useMessages();
  const t = useTranslations('treatments');
  const { columns } = said;
  const rows = treatments.map((one) => ({ id: one.entryId, ...treatmentWords(one, said, entries.treatments, t) }));
  return (
    <Table
      isStacked
      caption={title}
      isCaptionHidden
      rows={rows}
      keyOf={({ id }) => id}
      columns={[
        { head: columns.day, cell: ({ day }) => day },
        { head: columns.what, cell: ({ what }) => what },
        { head: columns.where, cell: ({ where }) => where },
        { head: columns.product, cell: ({ product }) => product },
        { head: columns.rate, cell: ({ rate }) => rate },
        { head: columns.by, cell: ({ by }) => by },
        { head: columns.reentry, cell: ({ reentry }) => reentry },
        { head: columns.note, cell: ({ note }) => note },
      ]}
    />
  );
}
