import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { testDatabase } from '@sprigline/test/database';
import pg from 'pg';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { migrate, readPending } from './index.mjs';

let folder = '';
let url = '';

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'migrations-'));
  url = (await testDatabase()).owner;
  await ask('DROP TABLE schema_migration');
});
afterEach(() => rmSync(folder, { recursive: true }));

function write(name: string, sql: string): void {
  mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, name, 'migration.sql'), sql);
}

async function ask(sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(sql)).rows;
  } finally {
    await client.end();
  }
}

const FIRST = '20300101000000_first';
const SECOND = '20300102000000_second';

test('applies what is new, in the order of the names, and nothing twice', async () => {
  write(SECOND, 'ALTER TABLE thing ADD COLUMN colour text;');
  write(FIRST, 'CREATE TABLE thing (id int);');

  expect(await readPending({ url, folder })).toEqual([FIRST, SECOND]);
  expect(await migrate({ url, folder })).toEqual([FIRST, SECOND]);
  expect(await migrate({ url, folder })).toEqual([]);
  expect(await ask('SELECT colour FROM thing')).toEqual([]);
});

test('four starts at once apply each migration once', async () => {
  write(FIRST, 'CREATE TABLE thing (id int); SELECT pg_sleep(0.1);');
  write(SECOND, 'CREATE TABLE other (id int);');

  const applied = await Promise.all([1, 2, 3, 4].map(() => migrate({ url, folder })));

  expect(applied.flat().sort()).toEqual([FIRST, SECOND]);
});

test('a migration that fails leaves nothing behind, names its line, and what came before it stays', async () => {
  write(FIRST, 'CREATE TABLE thing (id int);');
  write(SECOND, 'CREATE TABLE other (id int);\n\nINSERT INTO nowhere VALUES (1);');

  await expect(migrate({ url, folder })).rejects.toThrow(/"20300102000000_second" failed at .*migration\.sql:3: relation "nowhere"/);
  expect(await ask(`SELECT to_regclass('thing') IS NOT NULL AS first, to_regclass('other') AS second`)).toEqual([
    { first: true, second: null },
  ]);
  expect(await readPending({ url, folder })).toEqual([SECOND]);
});

test('refuses a file that was changed after it had been applied', async () => {
  write(FIRST, 'CREATE TABLE thing (id int);');
  await migrate({ url, folder });
  write(FIRST, 'CREATE TABLE thing (id bigint);');

  await expect(migrate({ url, folder })).rejects.toThrow('"20300101000000_first" was changed after');
});

test('refuses a database that is newer than the code', async () => {
  write(FIRST, 'CREATE TABLE thing (id int);');
  write(SECOND, 'CREATE TABLE other (id int);');
  await migrate({ url, folder });
  rmSync(join(folder, SECOND), { recursive: true });

  await expect(migrate({ url, folder })).rejects.toThrow('newer than this code: it has "20300102000000_second"');
});

test('refuses a migration that is older than one already applied', async () => {
  write(SECOND, 'CREATE TABLE other (id int);');
  await migrate({ url, folder });
  write(FIRST, 'CREATE TABLE thing (id int);');

  await expect(migrate({ url, folder })).rejects.toThrow('"20300101000000_first" is older than');
});

test('refuses a migration that ends the transaction itself', async () => {
  write(FIRST, 'CREATE TABLE thing (id int); COMMIT; CREATE TABLE other (id int);');

  await expect(migrate({ url, folder })).rejects.toThrow('ends the transaction itself');
});

test('refuses a folder that is not named like a migration', async () => {
  write('add-things', 'SELECT 1');

  await expect(migrate({ url, folder })).rejects.toThrow('not named like a migration');
});
