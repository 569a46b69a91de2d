import pg from 'pg';
import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';

const api = await testApi();

const asked = async (url: string): Promise<[number, string]> => {
  const { statusCode, payload } = await api.app.inject({ method: 'GET', url });
  return [statusCode, payload];
};

async function asSuperuser(statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: api.database.superuser });
  await client.connect();
  await client.query(statement);
  await client.end();
}

test('alive and ready', async () => {
  expect(await asked('/healthz')).toEqual([200, 'up\n']);
  expect(await asked('/readyz')).toEqual([200, 'ready\n']);
});

test('alive, but not ready, on a database that was put back to before a migration', async () => {
  await asSuperuser('DELETE FROM schema_migration WHERE name = (SELECT max(name) FROM schema_migration)');

  expect(await asked('/readyz')).toEqual([503, 'the database lacks a migration\n']);
  expect(await asked('/healthz')).toEqual([200, 'up\n']);
});

test('alive, but not ready, when the database lets nobody in', async () => {
  await asSuperuser('REVOKE SELECT ON schema_migration FROM sprigline_app');

  expect(await asked('/readyz')).toEqual([503, 'the database does not answer\n']);
  expect(await asked('/healthz')).toEqual([200, 'up\n']);
});
