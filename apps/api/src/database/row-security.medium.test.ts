// What row-level security alone lets through, with no filter of the application in
// the way: plain SELECTs by the app's own login, in every table there is.
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aRowInEveryTable } from '../../../../test/support/a-row-in-every-table.ts';
import { testDatabase } from '../../../../test/support/database/test-database.ts';
import { newId } from '../../../../test/support/people.ts';
import { beginFor, type Context } from './context.ts';

const database = await testDatabase();
const [OURS, THEIRS] = [newId(), newId()];
const app = new pg.Client({ connectionString: database.app });
const superuser = new pg.Client({ connectionString: database.superuser });
let tables: string[] = [];

/** Open only to the grant *see exact places*. */
const BEHIND_THE_GRANT = ['exact_place', 'permission', 'trip_note'];

beforeAll(async () => {
  await Promise.all([app.connect(), superuser.connect()]);
  for (const [id, handle] of [[OURS, 'ours'], [THEIRS, 'theirs']]) {
    await superuser.query(`INSERT INTO programme (id, handle, name, zone) VALUES ($1, $2, 'A programme', 'Europe/London')`, [id, handle]);
  }
  tables = await aRowInEveryTable(superuser, OURS);
});
afterAll(() => Promise.all([app.end(), superuser.end()]));

async function within<T>(context: Context | undefined, work: () => Promise<T>): Promise<T> {
  await app.query(context ? beginFor(context) : 'BEGIN');
  try {
    return await work();
  } finally {
    await app.query('ROLLBACK');
  }
}

/** Tables of which this context sees a row. */
async function seen(context: Context | undefined, among: readonly string[] = [...tables, 'programme']): Promise<string[]> {
  return within(context, async () => {
    const visible: string[] = [];
    for (const table of among) {
      const { rows } = await app.query<{ any: boolean }>(`SELECT EXISTS (SELECT FROM ${table} WHERE ${table === 'programme' ? 'id' : 'programme_id'} = '${OURS}') AS any`);
      if (rows[0]?.any) visible.push(table);
    }
    return visible;
  });
}

const allRights: Context = { programmeId: OURS, personId: newId(), seesExact: true };

describe('row-level security alone', () => {
  test('shows a programme all its own rows, so that what follows can fail', async () => {
    expect(tables.length).toBeGreaterThan(30);
    expect(await seen(allRights)).toEqual([...tables, 'programme']);
  });

  test('shows another programme not one row of any table', async () => {
    expect(await seen({ ...allRights, programmeId: THEIRS })).toEqual([]);
  });

  test('shows nothing at all to a transaction that says no programme, also after one that did', async () => {
    expect(await seen(undefined)).toEqual([]);
    await seen(allRights);
    expect(await seen(undefined)).toEqual([]);
  });

  test('keeps exact places, permissions and notes of trips from who lacks the grant', async () => {
    expect(tables).toEqual(expect.arrayContaining(BEHIND_THE_GRANT));
    expect(await seen({ ...allRights, seesExact: false }, BEHIND_THE_GRANT)).toEqual([]);
  });

  test('shows a partner nothing but the programme’s name, as long as no batch is theirs', async () => {
    expect(await seen({ ...allRights, partnerId: newId() })).toEqual(['programme']);
  });

  test('lets another programme change and remove nothing', async () => {
    const changed: string[] = [];
    for (const table of tables) {
      for (const deed of [`UPDATE ${table} SET programme_id = programme_id`, `DELETE FROM ${table}`]) {
        await within({ ...allRights, programmeId: THEIRS }, async () => {
          const done = await app.query(deed).catch((error: Error) => {
            // A table that is only added to refuses the deed itself.
            if (!/permission denied/.test(error.message)) throw error;
            return { rowCount: 0 };
          });
          if (done.rowCount !== 0) changed.push(deed);
        });
      }
    }
    expect(changed).toEqual([]);
  });

  test('lets nobody write a row into another programme', async () => {
    for (const table of tables) {
      const copied = within({ ...allRights, programmeId: THEIRS }, async () => {
        const { rows } = await superuser.query<{ row: object }>(`SELECT to_jsonb(t) AS row FROM ${table} t LIMIT 1`);
        await app.query(`INSERT INTO ${table} SELECT * FROM jsonb_populate_record(NULL::${table}, $1)`, [rows[0]?.row]);
      });
      await expect(copied, table).rejects.toThrow(/row-level security|permission denied/);
    }
  });
});

describe('the logins', () => {
  test('of the app reads no account, session or link, and that of the sign-in library no programme', async () => {
    const auth = new pg.Client({ connectionString: database.auth });
    await auth.connect();
    try {
      for (const table of ['auth."user"', 'auth.session', 'auth.account', 'auth.wrong_try', 'setup_link']) {
        await expect(app.query(`SELECT FROM ${table}`), table).rejects.toThrow('permission denied');
      }
      for (const table of [...tables, 'programme', 'setup_link']) await expect(auth.query(`SELECT FROM ${table}`), table).rejects.toThrow('permission denied');
      await expect(auth.query(`SELECT who_calls('x', 'ours')`)).rejects.toThrow('permission denied');
      await expect(app.query(`SELECT offer_setup_link('x')`)).rejects.toThrow('permission denied');
    } finally {
      await auth.end();
    }
  });

  test('of the keeper reads every table and every counter, which a backup is made of', async () => {
    const { rows } = await superuser.query<{ name: string }>(
      `SELECT oid::regclass::text AS name FROM pg_class WHERE relkind IN ('r', 'p', 'S') AND relnamespace::regnamespace::text IN ('public', 'auth')
         AND NOT CASE relkind WHEN 'S' THEN has_sequence_privilege('sprigline_keeper', oid, 'SELECT') ELSE has_table_privilege('sprigline_keeper', oid, 'SELECT') END`,
    );
    expect(rows).toEqual([]);
  });

  test('of the app may not change or remove what is only added to', async () => {
    for (const table of ['entry', 'audit', 'label']) {
      await expect(app.query(`UPDATE ${table} SET programme_id = programme_id`)).rejects.toThrow('permission denied');
      await expect(app.query(`DELETE FROM ${table}`)).rejects.toThrow('permission denied');
    }
  });
});
