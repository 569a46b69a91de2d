import { createHmac, randomBytes, randomUUID } from 'node:crypto';
import pg from 'pg';
import { BASE_URL, SECRET, type TestApi } from './api.ts';

export type TestRole = 'volunteer' | 'coordinator' | 'owner' | 'partner';

/** What a browser of ours sends along. */
export interface SessionHeaders extends Record<string, string> {
  cookie: string;
  origin: string;
}

/** A UUID of version 7, as every caller makes them. */
export function newId(): string {
  const time = Date.now().toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${randomUUID().slice(15)}`;
}

/**
 * Somebody with an account and a role in a programme, which is made if it is not there.
 *
 * Rows and session are written straight into the database: whoever tests stands or
 * sheets need not wait for a password to be hashed. The sign-in tests take the real way.
 *
 * @returns headers for `app.inject`; `idOf` gives the person's id
 */
export async function signedIn(api: TestApi, role: TestRole, programme = 'harrowdale', options: { seesExact?: boolean; partnerId?: string } = {}): Promise<SessionHeaders> {
  return (await member(api, role, programme, options)).headers;
}

export interface Member {
  readonly headers: SessionHeaders;
  readonly programmeId: string;
  readonly personId: string;
  readonly userId: string;
  readonly name: string;
}

export async function member(api: TestApi, role: TestRole, programme = 'harrowdale', { seesExact = false, partnerId: ofPartner }: { seesExact?: boolean; partnerId?: string } = {}): Promise<Member> {
  return asOwner(api, async (sql) => {
    const programmeId = await programmeOf(sql, programme);
    const partnerId = role === 'partner' ? (ofPartner ?? (await partnerOf(sql, programmeId))) : null;
    const [personId, userId] = [newId(), randomBytes(12).toString('hex')];
    const name = `${role} ${userId.slice(0, 6)}`;
    await sql.query('INSERT INTO auth."user" (id, name, email) VALUES ($1, $2, $3)', [userId, name, `${userId}@example.org`]);
    await sql.query(
      'INSERT INTO person (programme_id, id, name, user_id, role, partner_id, sees_exact) VALUES ($1, $2, $3, $4, $5, $6, $7)',
      [programmeId, personId, name, userId, role, partnerId, seesExact],
    );
    return { headers: await sessionOf(sql, userId), programmeId, personId, userId, name };
  });
}

/** A session of an account, signed as the sign-in library signs it. */
async function sessionOf(sql: pg.Client, userId: string): Promise<SessionHeaders> {
  const token = randomBytes(24).toString('hex');
  await sql.query(
    `INSERT INTO auth.session (id, "expiresAt", token, "userId") VALUES ($1, now() + interval '14 days', $2, $3)`,
    [randomBytes(12).toString('hex'), token, userId],
  );
  const signature = createHmac('sha256', SECRET).update(token).digest('base64');
  return { cookie: `sprigline.session_token=${encodeURIComponent(`${token}.${signature}`)}`, origin: BASE_URL };
}

async function programmeOf(sql: pg.Client, handle: string): Promise<string> {
  await sql.query(
    `INSERT INTO programme (id, handle, name, zone) VALUES ($1, $2, $3, 'Europe/London') ON CONFLICT (handle) DO NOTHING`,
    [newId(), handle, `The ${handle} programme`],
  );
  const { rows } = await sql.query<{ id: string }>('SELECT id FROM programme WHERE handle = $1', [handle]);
  return rows[0]!.id;
}

async function partnerOf(sql: pg.Client, programmeId: string): Promise<string> {
  const id = newId();
  await sql.query(`INSERT INTO partner (programme_id, id, name, since) VALUES ($1, $2, $3, '2026-01-01')`, [programmeId, id, `Partner ${id}`]);
  return id;
}

/** As the role that migrates: an ordinary one, under row-level security like everybody. */
export async function asOwner<T>(api: TestApi, work: (sql: pg.Client) => Promise<T>): Promise<T> {
  const sql = new pg.Client({ connectionString: api.database.owner });
  await sql.connect();
  try {
    return await work(sql);
  } finally {
    await sql.end();
  }
}
