import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import pg from 'pg';
import { expect, test } from 'vitest';
import { testDatabase } from '../support/database/test-database.ts';

/** One column as both sides tell it: `donor_tree.label text not null`. */
type Column = string;

const SCHEMA = fileURLToPath(new URL('../../prisma/schema/', import.meta.url));

/** What PostgreSQL calls a scalar of Prisma's that names no type of its own. */
const PLAIN: Readonly<Record<string, string>> = {
  String: 'text', Int: 'integer', BigInt: 'bigint', Boolean: 'boolean', Bytes: 'bytea', Json: 'jsonb', Role: 'role', Stage: 'stage', Look: 'look',
};

function columnsOfSchema(): Column[] {
  const text = readdirSync(SCHEMA).map((file) => readFileSync(`${SCHEMA}/${file}`, 'utf8')).join('\n');
  return [...text.matchAll(/^model \w+ \{\n(.*?)^\}/gms)].flatMap(([, body = '']) => {
    const table = /@@map\("(\w+)"\)/.exec(body)?.[1];
    return [...body.matchAll(/^ {2}([a-z]\w*) +(\w+)(\("\w+"\))?(\?|\[\])?(.*)$/gm)].map(([, name, type = '', unsupported, many, rest = '']) => {
      const column = /@map\("(\w+)"\)/.exec(rest)?.[1] ?? name;
      return `${table}.${column} ${databaseType(type, unsupported, rest)}${many === '[]' ? '[]' : ''}${many === '?' ? '' : ' not null'}`;
    });
  });
}

function databaseType(type: string, unsupported: string | undefined, rest: string): string {
  if (unsupported) return unsupported.slice(2, -2);
  const native = /@db\.(\w+)(\([\d, ]+\))?/.exec(rest);
  if (!native) return PLAIN[type] ?? `unknown to this test: ${type}`;
  const [, name = '', size = ''] = native;
  const named = { Decimal: `numeric${size.replace(' ', '')}`, Timestamptz: `timestamp${size} with time zone` };
  return named[name as keyof typeof named] ?? name.toLowerCase();
}

/** Names of domains count as what they are made of; the runner's own table is no business of Prisma's. */
const COLUMNS_OF_DATABASE = `
  SELECT format('%s.%s %s%s', c.relname, a.attname,
    format_type(CASE WHEN t.typtype = 'd' THEN t.typbasetype ELSE a.atttypid END, a.atttypmod),
    CASE WHEN a.attnotnull THEN ' not null' ELSE '' END) AS column
  FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid JOIN pg_type t ON t.oid = a.atttypid
  WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND a.attnum > 0 AND NOT a.attisdropped
    AND c.relname <> 'schema_migration'`;

test('the Prisma schema tells every table, column, type and emptiness as the migrations make them', async () => {
  const database = await testDatabase();
  const client = new pg.Client({ connectionString: database.keeper });
  await client.connect();
  const { rows } = await client.query<{ column: Column }>(COLUMNS_OF_DATABASE).finally(() => client.end());
  const migrated = rows.map(({ column }) => column).sort();

  expect(migrated.length).toBeGreaterThan(200);
  expect(columnsOfSchema().sort()).toEqual(migrated);
});
