import type { ReactNode } from 'react';
import { ButtonLink } from './button-link.tsx';
import { Empty } from './empty.tsx';
import { PageHeading } from './page-heading.tsx';
import { type Column, Table } from './table.tsx';

interface ListPageProps<Row> {
  readonly title: string;
  readonly lead: string;
  /** What to say while there is nothing. */
  readonly empty: string;
  /** The way to a new one, for those who may. */
  readonly add: { readonly href: string; readonly words: string } | undefined;
  readonly rows: readonly Row[];
  readonly columns: readonly Column<Row>[];
  readonly keyOf: (row: Row) => string;
  /** Below the rows, such as the way to the next part. */
  readonly children?: ReactNode;
}

/** A page that lists one kind of record. */
export function ListPage<Row>({ title, lead, empty, add, rows, columns, keyOf, children }: ListPageProps<Row>) {
  const button = add && <ButtonLink href={add.href}>{add.words}</ButtonLink>;
  return (
    <>
      <PageHeading lead={lead} act={rows.length > 0 && button}>
        {title}
      </PageHeading>
      {rows.length === 0 ? <Empty act={button}>{empty}</Empty> : <Table isStacked caption={title} isCaptionHidden rows={rows} columns={columns} keyOf={keyOf} />}
      {children}
    </>
  );
}
