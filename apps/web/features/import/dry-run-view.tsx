import type { DryRun } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Facts } from '../../ui/facts.tsx';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import { Table } from '../../ui/table.tsx';
import { FaultsTable } from './faults-table.tsx';
import { writeSheet } from './write-sheet.action.ts';

/** What writing a sheet would do; with the button, once nothing has to be mended. */
export function DryRunView({ programme, id, dryRun }: { programme: string; id: string; dryRun: DryRun }) {
  const { imports: said } = useMessages();
  const t = useTranslations('imports');
  if (dryRun.faultCount > 0) {
    return (
      <>
        <p className="mb-4 max-w-prose">{said.dry.faultsLead}</p>
        <FaultsTable faults={dryRun.faults} faultCount={dryRun.faultCount} />
      </>
    );
  }
  const isNothing = dryRun.added === 0 && dryRun.changedCount === 0;
  return (
    <div className="grid gap-8">
      <p className="max-w-prose font-semibold">{isNothing ? said.dry.nothing : said.dry.clear}</p>
      <Facts
        facts={[
          { term: said.dry.added, says: dryRun.added },
          { term: said.dry.same, says: dryRun.same },
          { term: said.dry.changed, says: dryRun.changedCount },
          { term: said.dry.gone, says: dryRun.goneCount },
        ]}
      />
      <NewEntries byAct={dryRun.byAct} />
      <NewNames names={dryRun.newNames} />
      <ActionForm action={writeSheet.bind(null, programme, id)} labels={said.dry.fields} send={t('dry.write', { rows: dryRun.added })}>
        {dryRun.changedCount > 0 && (
          <>
            <ChangedRows changed={dryRun.changed} />
            <TickField name="replaceChanged" hint={said.dry.replaceHint} />
          </>
        )}
      </ActionForm>
    </div>
  );
}

function NewEntries({ byAct }: Pick<DryRun, 'byAct'>) {
  const { imports: said } = useMessages();
  const rows = Object.entries(byAct).map(([act, entries]) => ({ act: act as keyof typeof said.acts, entries }));
  if (rows.length === 0) return null;
  return (
    <Table
      caption={said.dry.byAct}
      rows={rows}
      keyOf={({ act }) => act}
      columns={[
        { head: said.dry.act, cell: ({ act }) => said.acts[act] },
        { head: said.dry.entries, cell: ({ entries }) => entries, isNumber: true },
      ]}
    />
  );
}

function NewNames({ names }: { names: DryRun['newNames'] }) {
  const { imports: said } = useMessages();
  const told = Object.entries(names).filter(([, list]) => list.length > 0);
  if (told.length === 0) return null;
  return (
    <section>
      <h3 className="text-lg">{said.dry.names}</h3>
      <p className="mt-1 mb-3 max-w-prose text-ink-soft">{said.dry.namesLead}</p>
      <Facts facts={told.map(([kind, list]) => ({ term: `${said.dry.name[kind as keyof typeof said.dry.name]} (${list.length})`, says: list.join(', ') }))} />
    </section>
  );
}

function ChangedRows({ changed }: Pick<DryRun, 'changed'>) {
  const { imports: said } = useMessages();
  return (
    <div className="w-full">
      <p className="mb-2 max-w-prose text-ink-soft">{said.dry.changedLead}</p>
      <Table
        caption={said.dry.changed}
        rows={changed}
        keyOf={({ row }) => String(row)}
        columns={[
          { head: said.dry.row, cell: ({ row }) => row, isNumber: true },
          { head: said.dry.now, cell: ({ now }) => now },
          { head: said.dry.before, cell: ({ before }) => before },
        ]}
      />
    </div>
  );
}
