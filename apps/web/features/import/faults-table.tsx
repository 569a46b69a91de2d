import type { DryRun } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Table } from '../../ui/table.tsx';

/** Everything that has to be mended before the sheet can be written: where, what stands there, what to do. */
export function FaultsTable({ faults, faultCount }: Pick<DryRun, 'faults' | 'faultCount'>) {
  const { imports: said } = useMessages();
  const t = useTranslations('imports');
  const rows = faults.map((fault, index) => ({ ...fault, key: String(index) }));
  const todo = (code: string, other = 0): string => t(`faults.${code as keyof typeof said.faults}`, { other });
  return (
    <>
      <Table
        caption={t('dry.faults', { faults: faultCount })}
        rows={rows}
        keyOf={({ key }) => key}
        columns={[
          { head: said.dry.row, cell: ({ row }) => row, isNumber: true },
          { head: said.dry.column, cell: ({ column }) => column ?? said.dry.wholeRow },
          { head: said.dry.seen, cell: ({ seen }) => seen },
          { head: said.dry.todo, cell: ({ code, other }) => todo(code, other) },
        ]}
      />
      {faultCount > faults.length && <p className="mt-3">{t('dry.more', { more: faultCount - faults.length })}</p>}
    </>
  );
}
