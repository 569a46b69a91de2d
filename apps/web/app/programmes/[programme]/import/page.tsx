import { ImportList } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { bringSheet } from '../../../../features/import/bring-sheet.action.ts';
import { SheetField } from '../../../../features/import/sheet-field.tsx';
import { newId } from '../../../../lib/new-id.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { apiOf } from '../../../../lib/workplace.ts';
import { ActionForm } from '../../../../ui/form/action-form.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';
import { Section } from '../../../../ui/section.tsx';
import { Table } from '../../../../ui/table.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('imports'))('title') };
}

export default async function ImportsPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ imports }, { imports: said }, t] = await Promise.all([read(apiOf(programme, 'imports'), ImportList), getMessages(), getTranslations('imports')]);
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <ActionForm action={bringSheet.bind(null, programme)} labels={said.fields} send={said.send}>
        <input type="hidden" name="id" value={newId()} />
        <SheetField hint={said.hints.sheet} tooLarge={said.tooLarge} />
      </ActionForm>
      <div className="mt-12" />
      <Section heading={said.brought}>
        {imports.length === 0 ? (
          <p className="text-ink-soft">{said.empty}</p>
        ) : (
          <Table
            caption={said.brought}
            isCaptionHidden
            rows={imports}
            keyOf={({ id }) => id}
            columns={[
              { head: said.columns.file, cell: ({ id, fileName }) => <RowLink href={pageOf(programme, 'import', id)}>{fileName}</RowLink> },
              { head: said.columns.when, cell: ({ uploadedAt }) => uploadedAt.slice(0, 10) },
              { head: said.columns.who, cell: ({ uploadedBy }) => uploadedBy },
              { head: said.columns.state, cell: ({ state }) => said.state[state] },
              { head: said.columns.did, cell: ({ result }) => result && t('did', result) },
            ]}
          />
        )}
      </Section>
    </>
  );
}
