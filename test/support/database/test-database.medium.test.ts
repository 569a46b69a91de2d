import pg from 'pg';
import { expect, test } from 'vitest';
import { testDatabase } from './test-database.ts';

const database = await testDatabase();

async function ask(url: string, sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(sql)).rows;
  } finally {
    await client.end();
  }
}

const WHO = `
  SELECT rolsuper, rolbypassrls, pg_has_role('sprigline_app', 'MEMBER') AS app,
    (SELECT count(*)::int FROM pg_class WHERE relowner = pg_roles.oid) AS owns
  FROM pg_roles WHERE rolname = current_user`;

test('the app signs in without the power to step around the policies, and owns nothing', async () => {
  expect(await ask(database.app, WHO)).toEqual([{ rolsuper: false, rolbypassrls: false, app: true, owns: 0 }]);
});

test('the keeper sees past the policies and is no superuser', async () => {
  expect(await ask(database.keeper, WHO)).toMatchObject([{ rolsuper: false, rolbypassrls: true, app: false }]);
});

test('neither the app nor the auth login may make a table', async () => {
  for (const url of [database.app, database.auth]) {
    await expect(ask(url, 'CREATE TABLE mine (id int)')).rejects.toThrow('permission denied for schema public');
  }
});

test('two files never share a database', async () => {
  const other = await testDatabase();
  await ask(other.owner, 'CREATE TABLE only_here (id int)');

  expect(await ask(database.owner, `SELECT to_regclass('only_here') AS found`)).toEqual([{ found: null }]);
});
