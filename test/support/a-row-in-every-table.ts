import { randomBytes } from 'node:crypto';
import type pg from 'pg';

interface Column {
  readonly table: string;
  readonly column: string;
  readonly type: string;
  readonly label: string | null;
}

const COLUMNS = `
  SELECT c.oid::regclass::text AS "table", a.attname AS "column", t.typname AS type,
    (SELECT e.enumlabel FROM pg_enum e WHERE e.enumtypid = t.oid ORDER BY e.enumsortorder LIMIT 1) AS label
  FROM pg_class c
  JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attnotnull AND NOT a.atthasdef AND a.attidentity = ''
  JOIN pg_type t ON t.oid = CASE WHEN (SELECT typtype FROM pg_type WHERE oid = a.atttypid) = 'd' THEN (SELECT typbasetype FROM pg_type WHERE oid = a.atttypid) ELSE a.atttypid END
  WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'
    AND EXISTS (SELECT FROM pg_attribute p WHERE p.attrelid = c.oid AND p.attname = 'programme_id' AND NOT p.attisdropped)`;

/**
 * Puts one row of a programme into each table that has programmes, whatever tables there
 * are. The rows mean nothing, so checks, foreign keys and triggers are taken out of
 * the way first: this is for tests of who sees a row, on a database of their own.
 *
 * @param sql as superuser
 * @returns the names of the tables
 */
export async function aRowInEveryTable(sql: pg.Client, programmeId: string): Promise<string[]> {
  await sql.query(`SET session_replication_role = replica`);
  const checks = await sql.query<{ drop: string }>(
    `SELECT format('ALTER TABLE %s DROP CONSTRAINT %I', conrelid::regclass, conname) AS drop
     FROM pg_constraint WHERE contype = 'c' AND conrelid <> 0 AND connamespace = 'public'::regnamespace`,
  );
  for (const { drop } of checks.rows) await sql.query(drop);

  const { rows } = await sql.query<Column>(COLUMNS);
  const tables = [...new Set(rows.map(({ table }) => table))];
  for (const table of tables) {
    const columns = rows.filter((one) => one.table === table);
    const names = columns.map(({ column }) => `"${column}"`).join(', ');
    const values = columns.map((one) => (one.column === 'programme_id' ? `'${programmeId}'` : anyValue(one))).join(', ');
    await sql.query(`INSERT INTO ${table} (${names}) VALUES (${values})`);
  }
  return tables.sort();
}

function anyValue({ table, column, type, label }: Column): string {
  if (label !== null) return `'${label}'`;
  if (type.startsWith('_')) return `'{}'`;
  switch (type) {
    case 'uuid': return 'gen_random_uuid()';
    case 'text': case 'varchar': return `'${randomBytes(6).toString('hex')}'`;
    case 'bool': return 'false';
    case 'int2': case 'int4': case 'int8': case 'numeric': case 'float8': return '1';
    case 'date': case 'timestamptz': return 'now()';
    case 'json': case 'jsonb': return `'{}'`;
    case 'bytea': return 'sha256(gen_random_uuid()::text::bytea)';
    default: throw new Error(`no value known for ${table}.${column} of type ${type}: add one here`);
  }
}
