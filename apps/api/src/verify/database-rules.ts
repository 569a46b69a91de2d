import pg from 'pg';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import type { Finding } from './finding.ts';

interface Reference extends Record<string, unknown> {
  readonly name: string;
  readonly child: string;
  readonly parent: string;
  readonly child_columns: string[];
  readonly parent_columns: string[];
}

const REFERENCES = `
  SELECT c.conname AS name, c.conrelid::regclass::text AS child, c.confrelid::regclass::text AS parent,
    ARRAY(SELECT attname::text FROM unnest(c.conkey) WITH ORDINALITY k(n, o) JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = k.n ORDER BY o) AS child_columns,
    ARRAY(SELECT attname::text FROM unnest(c.confkey) WITH ORDINALITY k(n, o) JOIN pg_attribute a ON a.attrelid = c.confrelid AND a.attnum = k.n ORDER BY o) AS parent_columns
  FROM pg_constraint c WHERE c.contype = 'f' AND has_table_privilege(c.conrelid, 'SELECT') AND has_table_privilege(c.confrelid, 'SELECT') AND c.connamespace = 'public'::regnamespace ORDER BY 1`;

/** Rows that point to nothing, or into another programme: foreign keys can be stepped around by whoever may switch triggers off. */
export async function brokenReferences(sql: UnitOfWork): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const reference of await sql.rows<Reference>(REFERENCES)) findings.push(...(await brokenBy(sql, reference)));
  return findings;
}

async function brokenBy(sql: UnitOfWork, { name, child, parent, child_columns, parent_columns }: Reference): Promise<Finding[]> {
  const column = pg.escapeIdentifier(child_columns.at(-1) ?? '');
  const target = pg.escapeIdentifier(parent_columns.at(-1) ?? '');
  const isOfTenant = child_columns.length === 2 && child_columns[0] === 'programme_id';
  const match = child_columns.map((each, index) => `p.${pg.escapeIdentifier(parent_columns[index] ?? '')} = c.${pg.escapeIdentifier(each)}`).join(' AND ');
  const rows = await sql.rows<{ programme_id: string | null; row: string; id: string; is_foreign: boolean }>(`
    SELECT to_jsonb(c) ->> 'programme_id' AS programme_id, c.${column}::text AS id,
      coalesce('with id ' || (to_jsonb(c) ->> 'id'), 'of batch ' || (to_jsonb(c) ->> 'batch_id'), 'of entry ' || (to_jsonb(c) ->> 'entry_id'), 'without id') AS row,
      ${isOfTenant ? `EXISTS (SELECT FROM ${parent} p WHERE p.${target} = c.${column})` : 'false'} AS is_foreign
    FROM ${child} c WHERE c.${column} IS NOT NULL AND NOT EXISTS (SELECT FROM ${parent} p WHERE ${match}) LIMIT 100`);
  return rows.map(({ programme_id, row, id, is_foreign }) => ({
    rule: is_foreign ? 'row-of-another-programme' : 'row-is-missing',
    programmeId: programme_id ?? undefined,
    sentence: is_foreign
      ? `The ${child} ${row} names the ${parent} ${id}, which is of another programme (${name}).`
      : `The ${child} ${row} names the ${parent} ${id}, which is not there (${name}).`,
  }));
}

/** Rows that break a CHECK which was added, or switched back on, without looking at them. */
export async function brokenChecks(sql: UnitOfWork): Promise<Finding[]> {
  const checks = await sql.rows<{ name: string; table: string; condition: string }>(`
    SELECT conname AS name, conrelid::regclass::text AS table, pg_get_expr(conbin, conrelid) AS condition
    FROM pg_constraint WHERE contype = 'c' AND conrelid <> 0 AND has_table_privilege(conrelid, 'SELECT') AND connamespace = 'public'::regnamespace ORDER BY 1`);
  const findings: Finding[] = [];
  for (const { name, table, condition } of checks) {
    const rows = await sql.rows<{ programme_id: string | null; row: string }>(`
      SELECT to_jsonb(c) ->> 'programme_id' AS programme_id,
        coalesce('with id ' || (to_jsonb(c) ->> 'id'), 'of batch ' || (to_jsonb(c) ->> 'batch_id'), 'of sticking ' || (to_jsonb(c) ->> 'sticking_id'), 'without id') AS row
      FROM ${table} c WHERE NOT (${condition}) LIMIT 100`);
    findings.push(...rows.map(({ programme_id, row }) => ({
      rule: 'check-is-broken' as const,
      programmeId: programme_id ?? undefined,
      sentence: `The ${table} ${row} breaks the rule ${name}.`,
    })));
  }
  return findings;
}

/** What should keep rows from being changed or hidden rows from being seen, and is switched off. */
export async function guardsThatAreOff(sql: UnitOfWork): Promise<Finding[]> {
  const rows = await sql.rows<{ sentence: string }>(`
    SELECT 'The trigger ' || tgname || ' on ' || tgrelid::regclass || ' is switched off.' AS sentence
    FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid WHERE c.relnamespace = 'public'::regnamespace AND t.tgenabled = 'D'
    UNION ALL
    SELECT 'Row-level security is not forced on the table ' || c.oid::regclass || '.'
    FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attname = 'programme_id' AND NOT a.attisdropped
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND NOT (c.relrowsecurity AND c.relforcerowsecurity) ORDER BY 1`);
  return rows.map(({ sentence }) => ({ rule: 'guard-is-off', sentence }));
}
