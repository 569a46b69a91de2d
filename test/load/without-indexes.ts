import type pg from 'pg';

/** Takes the indexes of some tables away and builds them again after the work: quicker than to keep them. Keys stay. */
export async function withoutIndexes(sql: pg.Client, tables: readonly string[], work: () => Promise<void>): Promise<void> {
  const { rows } = await sql.query<{ name: string; definition: string }>(
    `SELECT i.indexrelid::regclass::text AS name, pg_get_indexdef(i.indexrelid) AS definition FROM pg_index i
     WHERE i.indrelid = ANY ($1::text[]::regclass[]) AND NOT EXISTS (SELECT FROM pg_constraint c WHERE c.conindid = i.indexrelid)`,
    [tables],
  );
  for (const { name } of rows) await sql.query(`DROP INDEX ${name}`);
  await work();
  for (const { definition } of rows) await sql.query(definition);
}
