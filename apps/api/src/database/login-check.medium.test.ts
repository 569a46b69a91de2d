import pg from 'pg';
import { expect, test } from 'vitest';
import { testDatabase } from '../../../../test/support/database/test-database.ts';
import { refuseUnsafeLogin } from './login-check.ts';

const database = await testDatabase();

async function asSuperuser(sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: database.superuser });
  await client.connect();
  await client.query(sql).finally(() => client.end());
}

test('the app’s own login may start', async () => {
  await expect(refuseUnsafeLogin(database.app)).resolves.toBeUndefined();
});

test.each([
  ['superuser', /superuser or a role with BYPASSRLS/],
  ['keeper', /superuser or a role with BYPASSRLS/],
  ['owner', /member of sprigline_owner[^]*it owns .*person/],
] as const)('the %s’s login may not, and its password is not told', async (login, words) => {
  const url = database[login];
  const refusal = await refuseUnsafeLogin(url).then(() => '', (error: Error) => error.message);
  expect(refusal).toMatch(words);
  expect(refusal).not.toContain(new URL(url).password);
});

test('nor may any, while a table lies open', async () => {
  await asSuperuser('ALTER TABLE stand NO FORCE ROW LEVEL SECURITY; CREATE TABLE forgotten (programme_id uuid)');
  await expect(refuseUnsafeLogin(database.app)).rejects.toThrow(/not forced on .*stand.*forgotten|not forced on .*forgotten.*stand/);
});
