import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createApi } from '@sprigline/api';
import { migrate } from '@sprigline/prisma/runner';
import pg from 'pg';
import { afterAll, inject } from 'vitest';
import { BASE_URL, SECRET, type TestApi } from '../support/api.ts';
import { copyTemplate } from '../support/database/template.ts';
import { type Member, member } from '../support/people.ts';
import { fillProgramme, type Size } from './fill-programme.ts';

/** Two hundred donor trees a stand, two and a half stickings a donor tree, forty entries a sticking. */
export const SIZES: Readonly<Record<string, Size>> = {
  '100,000 plants': { stands: 10, donors: 2_000, stickings: 5_000, looks: 34 },
  '1,000,000 plants': { stands: 100, donors: 20_000, stickings: 50_000, looks: 34 },
};

export interface Large {
  readonly api: TestApi;
  readonly volunteer: Member;
  readonly coordinator: Member;
}

/** The API on a programme of that size, which is made if the server has none that was made in the same way. */
export async function largeProgramme(size: Size): Promise<Large> {
  const address = inject('postgres');
  const name = `load_${size.stickings}_${wayOfFilling(size)}`;
  const at = (url: string): string => Object.assign(new URL(url), { pathname: `/${name}` }).href;
  const superuser = new pg.Client({ connectionString: address.superuser });
  await superuser.connect();
  const { rowCount } = await superuser.query('SELECT FROM pg_database WHERE datname = $1', [name]);
  await superuser.end();
  if (rowCount === 0) await copyTemplate(address, name);
  else await migrate({ url: at(address.owner) });

  const database = { name, owner: at(address.owner), app: at(address.app), auth: at(address.auth), keeper: at(address.keeper), superuser: at(address.superuser) };
  const photoFolder = join(tmpdir(), 'sprigline-load-photos');
  const app = await createApi({ port: 0, baseUrl: BASE_URL, secret: SECRET, databaseUrls: database, photoFolder, log: 'silent', requestsPerMinute: 1_000_000 });
  afterAll(() => app.close());
  const api = { app, database, photoFolder };
  const coordinator = await member(api, 'coordinator', 'large-hills');
  const volunteer = await member(api, 'volunteer', 'large-hills');
  await fillOnce(database.superuser, coordinator.programmeId, size);
  return { api, volunteer, coordinator };
}

async function fillOnce(url: string, programmeId: string, size: Size): Promise<void> {
  const sql = new pg.Client({ connectionString: url });
  await sql.connect();
  try {
    const { rowCount } = await sql.query('SELECT FROM stand WHERE programme_id = $1 LIMIT 1', [programmeId]);
    if (rowCount === 0) await fillProgramme(sql, programmeId, size);
  } finally {
    await sql.end();
  }
}

/** Changes when the size or the SQL that fills does. */
function wayOfFilling(size: Size): string {
  const files = ['fill-programme', 'fill-sources', 'fill-books', 'fill-entries', 'ids'].map((file) => readFileSync(new URL(`${file}.ts`, import.meta.url), 'utf8'));
  return createHash('sha256').update(JSON.stringify(size)).update(files.join('')).digest('hex').slice(0, 10);
}
