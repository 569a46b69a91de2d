import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { asOwner, member, signedIn } from '../../../../test/support/people.ts';
import { hashPassword } from './passwords.ts';

const api = await testApi();
const ORIGIN = { origin: 'http://localhost:4150' };
const PASSWORD = 'juniper on the ridge';

async function accountWithPassword(email: string): Promise<void> {
  const { userId } = await member(api, 'volunteer');
  const hash = await hashPassword(PASSWORD);
  await asOwner(api, async (sql) => {
    await sql.query('UPDATE auth."user" SET email = $2 WHERE id = $1', [userId, email]);
    await sql.query(`INSERT INTO auth.account (id, "accountId", "providerId", "userId", password) VALUES ($1, $1, 'credential', $1, $2)`, [userId, hash]);
  });
}

const signIn = (email: string, password: string, more: Record<string, unknown> = {}) =>
  api.app.inject({ method: 'POST', url: '/api/auth/sign-in/email', headers: ORIGIN, payload: { email, password }, ...more });

const me = (cookie: string) => api.app.inject({ url: '/api/v1/me', headers: { cookie } });

const cookieOf = (answer: { headers: Record<string, unknown> }): string => String([answer.headers['set-cookie']].flat()[0]).split(';')[0]!;

describe('signing in', () => {
  test('by e-mail and password gives a cookie that the API knows, and signing out ends it', async () => {
    await accountWithPassword('ada@example.org');
    const answer = await signIn('Ada@Example.org', PASSWORD);
    expect(answer.statusCode).toBe(204);
    expect(answer.headers['set-cookie']).toMatch(/^sprigline\.session_token=.*; HttpOnly; SameSite=Lax/);

    const cookie = cookieOf(answer);
    const before = await me(cookie);
    expect(before.json()).toMatchObject({ email: 'ada@example.org', programmes: [{ handle: 'harrowdale', role: 'volunteer' }] });

    expect((await api.app.inject({ method: 'POST', url: '/api/auth/sign-out', headers: { cookie, ...ORIGIN } })).statusCode).toBe(204);
    expect((await me(cookie)).statusCode).toBe(401);
  });

  test('a wrong password and an unknown e-mail are told in the same words', async () => {
    await accountWithPassword('bo@example.org');
    const [wrong, unknown] = await Promise.all([signIn('bo@example.org', 'not the password'), signIn('nobody@example.org', 'not the password')]);
    expect(wrong.statusCode).toBe(401);
    expect(wrong.headers['content-type']).toContain('application/problem+json');
    const { instance: _, ...words } = wrong.json();
    expect(unknown.json()).toMatchObject(words);
    expect(words).toMatchObject({ type: '/problems/sign-in/wrong' });
  });

  test('ten wrong tries from one address stop there, and nowhere else', async () => {
    await accountWithPassword('cleo@example.org');
    const guess = () => signIn('cleo@example.org', 'not the password', { remoteAddress: '192.0.2.7' });
    const answers = await Promise.all(Array.from({ length: 11 }, guess));
    expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([...Array(10).fill(401), 429]);

    const stopped = await signIn('cleo@example.org', PASSWORD, { remoteAddress: '192.0.2.7' });
    expect(stopped.statusCode).toBe(429);
    expect(Number(stopped.headers['retry-after'])).toBeGreaterThan(800);
    const forged = await signIn('cleo@example.org', PASSWORD, { remoteAddress: '192.0.2.7', headers: { ...ORIGIN, 'x-forwarded-for': '192.0.2.9' } });
    expect(forged.statusCode).toBe(429);

    expect((await signIn('cleo@example.org', PASSWORD, { remoteAddress: '192.0.2.8' })).statusCode).toBe(204);
  });

  test('a new password is set with the present one, and may end the other sessions', async () => {
    await accountWithPassword('dee@example.org');
    const [here, there] = [cookieOf(await signIn('dee@example.org', PASSWORD)), cookieOf(await signIn('dee@example.org', PASSWORD))];
    const change = (payload: object) => api.app.inject({ method: 'POST', url: '/api/auth/change-password', headers: { cookie: here, ...ORIGIN }, payload });

    expect((await change({ currentPassword: 'not the password', newPassword: 'yew and juniper' })).json()).toMatchObject({ type: '/problems/sign-in/wrong' });
    expect((await change({ currentPassword: PASSWORD, newPassword: 'short' })).json()).toMatchObject({ type: '/problems/sign-in/unfit-password' });
    expect((await change({ currentPassword: PASSWORD, newPassword: 'Password1234' })).json()).toMatchObject({ type: '/problems/sign-in/unfit-password' });
    expect((await change({ currentPassword: PASSWORD, newPassword: 'yew and juniper', revokeOtherSessions: true })).statusCode).toBe(204);
    expect((await me(there)).statusCode).toBe(401);
    expect((await signIn('dee@example.org', PASSWORD)).statusCode).toBe(401);
    expect((await signIn('dee@example.org', 'yew and juniper')).statusCode).toBe(204);
  });
});

describe('the session', () => {
  test('a token without this install’s signature opens nothing', async () => {
    const { cookie } = await signedIn(api, 'owner');
    expect((await me(cookie)).statusCode).toBe(200);
    const [name, value = ''] = cookie.split('=');
    const token = decodeURIComponent(value).split('.')[0]!;
    for (const forged of [token, `${token}.`, `${token}.AAAA`, `${token}.${Buffer.alloc(32).toString('base64')}`, '%E0%A4%A']) {
      expect((await me(`${name}=${forged}`)).statusCode).toBe(401);
    }
  });

  test('moves on when it is used, for at most 90 days, and dies unused', async () => {
    const { headers, userId } = await member(api, 'volunteer');
    const set = (created: string, updated: string, expires: string) =>
      asOwner(api, (sql) => sql.query(`UPDATE auth.session SET "createdAt" = now() - $2::interval, "updatedAt" = now() - $3::interval, "expiresAt" = now() + $4::interval WHERE "userId" = $1`, [userId, created, updated, expires]));
    const daysLeft = () =>
      asOwner(api, async (sql) => (await sql.query<{ days: number }>(`SELECT extract(epoch FROM "expiresAt" - now())::float / 86400 AS days FROM auth.session WHERE "userId" = $1`, [userId])).rows[0]!.days);

    await set('10 days', '2 hours', '1 day');
    expect((await me(headers.cookie)).statusCode).toBe(200);
    expect(await daysLeft()).toBeCloseTo(14, 2);

    await set('89 days', '2 hours', '1 hour');
    expect((await me(headers.cookie)).statusCode).toBe(200);
    expect(await daysLeft()).toBeCloseTo(1, 2);

    await set('20 days', '15 days', '-1 second');
    expect((await me(headers.cookie)).statusCode).toBe(401);
  });

  test('on https the cookie is bound to this very host', async () => {
    const secure = await testApi({ baseUrl: 'https://plants.example.org' });
    const { userId } = await member(secure, 'owner');
    const hash = await hashPassword(PASSWORD);
    await asOwner(secure, (sql) => sql.query(`INSERT INTO auth.account (id, "accountId", "providerId", "userId", password) VALUES ($1, $1, 'credential', $1, $2)`, [userId, hash]));
    const answer = await secure.app.inject({ method: 'POST', url: '/api/auth/sign-in/email', headers: { origin: 'https://plants.example.org' }, payload: { email: `${userId}@example.org`, password: PASSWORD } });

    expect(answer.headers['set-cookie']).toMatch(/^__Host-sprigline\.session_token=.*Secure/);
    expect(answer.headers['strict-transport-security']).toBe('max-age=31536000');
    expect((await secure.app.inject({ url: '/api/v1/me', headers: { cookie: cookieOf(answer) } })).statusCode).toBe(200);
  });
});

describe('the other doors of the sign-in library', () => {
  test.each(['sign-up/email', 'sign-in/social', 'delete-user', 'update-user', 'list-sessions', 'request-password-reset'])('%s is closed', async (door) => {
    const payload = { email: 'eve@example.org', password: PASSWORD, name: 'Eve' };
    expect((await api.app.inject({ method: 'POST', url: `/api/auth/${door}`, headers: ORIGIN, payload })).statusCode).toBe(404);
  });

  test('a body that is no JSON is a problem like any other', async () => {
    const answer = await api.app.inject({ method: 'POST', url: '/api/auth/sign-in/email', headers: { ...ORIGIN, 'content-type': 'application/json' }, payload: '{"email":' });
    expect(answer.headers['content-type']).toContain('application/problem+json');
    expect(answer.statusCode).toBe(422);
  });
});
