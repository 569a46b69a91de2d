import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { programsFolder, temporaryHome } from '@sprigline/test/cluster';
import pg from 'pg';
import { afterAll, afterEach, expect, test } from 'vitest';
import { startPostgres, type Postgres } from './index.mjs';

const home = temporaryHome();
const running = new Set<Postgres>();

async function start(folder = home): Promise<Postgres> {
  const postgres = await startPostgres({ home: folder, durable: false, mayCreateUser: false, ...programsFolder() });
  running.add(postgres);
  return postgres;
}

async function ask(postgres: Postgres, sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: postgres.url('superuser', 'postgres') });
  await client.connect();
  try {
    return (await client.query(sql)).rows;
  } finally {
    await client.end();
  }
}

afterEach(async () => {
  for (const postgres of running) await postgres.stop();
  running.clear();
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

test('what was written is there after a stop and a second start', async () => {
  const first = await start();
  await ask(first, 'CREATE TABLE kept AS SELECT 7 AS number');
  await first.stop();

  expect(await ask(await start(), 'SELECT number FROM kept')).toEqual([{ number: 7 }]);
});

test('starts again after the server was killed', async () => {
  const first = await start();
  process.kill(first.pid, 'SIGKILL');
  await first.ended;
  rmSync(join(home, 'running.json'));

  expect(await ask(await start(), 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
});

test('takes over from a launcher that was killed while its server lived on', async () => {
  const orphan = await start();
  writeFileSync(join(home, 'running.json'), JSON.stringify({ pid: process.pid, stamp: 'an earlier process' }));

  const next = await start();
  await orphan.ended;

  expect(next.pid).not.toBe(orphan.pid);
  expect(await ask(next, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
});

test('a process number left behind that belongs to another program now does not stop it', async () => {
  await (await start()).stop();
  writeFileSync(join(home, 'cluster', 'postmaster.pid'), `${process.pid}\n${join(home, 'cluster')}\n`);

  expect(await ask(await start(), 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
});

test('two at once on the same data: the second is refused and the first goes on', async () => {
  const first = await start();

  await expect(start()).rejects.toThrow(`running already on the data in ${home}`);
  expect(await ask(first, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
});

test('a first start that was cut short begins afresh', async () => {
  const fresh = join(home, 'fresh');
  mkdirSync(join(fresh, 'cluster.half', 'base'), { recursive: true });
  chmodSync(fresh, 0o711);

  expect(await ask(await start(fresh), 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
  expect(existsSync(join(fresh, 'cluster.half'))).toBe(false);
});

test('data of another version of PostgreSQL are left alone', async () => {
  const version = join(home, 'cluster', 'PG_VERSION');
  writeFileSync(version, '17\n');
  try {
    await expect(start()).rejects.toThrow(/written by PostgreSQL 17, and this is PostgreSQL 18.*Nothing was changed/);
  } finally {
    writeFileSync(version, '18\n');
  }
});

test('nobody signs in without the password, and nobody else may read it', async () => {
  const postgres = await start();
  const client = new pg.Client({ host: '127.0.0.1', port: postgres.port, user: 'postgres', password: 'guess', database: 'postgres' });

  await expect(client.connect()).rejects.toThrow('password authentication failed');
  expect(JSON.parse(readFileSync(join(home, 'logins.json'), 'utf8'))).toHaveProperty('keeper.password');
  expect(statSync(join(home, 'logins.json')).mode & 0o077).toBe(0);
});
