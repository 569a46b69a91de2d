import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';
import { makeSetupLink } from '../sign-in/links-from-the-machine.ts';

const api = await testApi();
const install = { databaseUrls: api.database, baseUrl: 'http://localhost:4150' };
const ORIGIN = { origin: 'http://localhost:4150' };
const tokenOf = (link: string | undefined): string => link!.split('/').at(-1)!;

const setUp = (token: string, name: string, handle = 'harrowdale') =>
  api.app.inject({
    method: 'POST',
    url: '/api/v1/setup',
    headers: ORIGIN,
    payload: {
      token,
      account: { name, email: `${name}@example.org`, password: 'juniper on the ridge' },
      programme: { handle, name: 'Harrowdale juniper', zone: 'Europe/London' },
    },
  });

describe('an empty install', () => {
  test('is set up once, by the newest link, however many try at once', async () => {
    const old = tokenOf(await makeSetupLink(install));
    const link = await makeSetupLink(install);
    const seen = (token: string) => api.app.inject({ method: 'GET', url: `/api/v1/setup/${token}` });
    expect((await seen(tokenOf(link))).statusCode).toBe(204);
    expect((await seen(old)).json()).toMatchObject({ type: '/problems/link/closed' });
    expect(link).toMatch(/^http:\/\/localhost:4150\/set-up\/[\w-]{43}$/);
    expect((await setUp(old, 'early')).json()).toMatchObject({ type: '/problems/link/closed' });

    const answers = await Promise.all(['ada', 'bo', 'ada', 'cleo'].map((name, n) => setUp(tokenOf(link), name, `harrowdale-${n}`)));
    expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([201, 404, 404, 404]);

    expect((await seen(tokenOf(link))).statusCode).toBe(404);

    const counts = await asOwner(api, async (sql) =>
      (await sql.query(`SELECT (SELECT count(*) FROM auth."user")::int AS accounts, (SELECT count(*) FROM programme)::int AS programmes,
        (SELECT count(*) FROM person WHERE role = 'owner')::int AS owners, (SELECT count(*) FROM audit)::int AS acts`)).rows[0]);
    expect(counts).toEqual({ accounts: 1, programmes: 1, owners: 1, acts: 1 });
    expect(await makeSetupLink(install)).toBeUndefined();
  });
});

describe('programmes', () => {
  const signIn = async (email: string) => {
    const answer = await api.app.inject({ method: 'POST', url: '/api/auth/sign-in/email', headers: ORIGIN, payload: { email, password: 'juniper on the ridge' } });
    return { cookie: String(answer.headers['set-cookie']).split(';')[0]!, ...ORIGIN };
  };

  test('the owner of one opens another, once however often it is sent, and others may not', async () => {
    const { rows } = await asOwner(api, (sql) => sql.query<{ email: string; handle: string }>('SELECT u.email, p.handle FROM auth."user" u, programme p'));
    const [{ email, handle: first }] = rows as [{ email: string; handle: string }];
    const owner = await signIn(email);
    const payload = { id: newId(), handle: 'winterbeck', name: 'Winterbeck yew', zone: 'Europe/London' };
    const open = (headers: Record<string, string>, body: object = payload) => api.app.inject({ method: 'POST', url: '/api/v1/programmes', headers, payload: body });

    const [one, two] = await Promise.all([open(owner), open(owner)]);
    expect([one.statusCode, two.statusCode]).toEqual([201, 201]);
    expect(two.json()).toEqual(one.json());
    expect((await open(owner, { ...payload, name: 'Another' })).json()).toMatchObject({ type: '/problems/programme/id-reused' });
    expect((await open(owner, { ...payload, id: newId() })).json()).toMatchObject({ type: '/problems/programme/handle-taken' });
    expect((await open(owner, { ...payload, id: newId(), zone: 'Middle/Earth' })).statusCode).toBe(422);

    const me = (await api.app.inject({ url: '/api/v1/me', headers: owner })).json();
    expect(me.programmes.map(({ handle, role }: { handle: string; role: string }) => [handle, role]).sort()).toEqual([[first, 'owner'], ['winterbeck', 'owner']]);
  });

  test('an id of somebody else’s programme is refused and shows nothing of it', async () => {
    const { rows } = await asOwner(api, (sql) => sql.query<{ id: string; email: string }>(`SELECT p.id, u.email FROM programme p, auth."user" u WHERE p.handle = 'winterbeck'`));
    const { id, email } = rows[0]!;
    const owner = await signIn(email);
    await asOwner(api, async (sql) => {
      await sql.query(`INSERT INTO auth."user" (id, name, email) VALUES ('other', 'Other', 'other@example.org')`);
      await sql.query(`INSERT INTO person (programme_id, id, name, user_id, role) VALUES ($1, $2, 'Other', 'other', 'owner')`, [id, newId()]);
      await sql.query(`UPDATE person SET left_at = now() WHERE programme_id = $1 AND user_id <> 'other'`, [id]);
    });
    const answer = await api.app.inject({ method: 'POST', url: '/api/v1/programmes', headers: owner, payload: { id, handle: 'elsewhere', name: 'Winterbeck yew', zone: 'Europe/London' } });
    expect(answer.json()).toMatchObject({ type: '/problems/programme/id-reused' });
    expect(answer.body).not.toContain('Winterbeck');
  });

  test('settings change only for who says which version they saw', async () => {
    const { rows } = await asOwner(api, (sql) => sql.query<{ email: string; handle: string }>(`SELECT u.email, p.handle FROM auth."user" u, programme p WHERE p.handle <> 'winterbeck' AND u.id <> 'other'`));
    const { email, handle } = rows[0]!;
    const owner = await signIn(email);
    const url = `/api/v1/programmes/${handle}`;
    const etag = String((await api.app.inject({ url, headers: owner })).headers['etag']);
    const change = (payload: object, more: Record<string, string> = { 'if-match': etag }) => api.app.inject({ method: 'PATCH', url, headers: { ...owner, ...more }, payload });

    expect((await change({ seasonStartsIn: 9 }, {})).statusCode).toBe(428);
    expect((await change({})).statusCode).toBe(422);
    expect((await change({ handle: 'other' })).statusCode).toBe(422);
    const [one, two] = await Promise.all([change({ seasonStartsIn: 9 }), change({ seasonStartsIn: 8 })]);
    expect([one.statusCode, two.statusCode].sort()).toEqual([200, 412]);
    expect((await change({ seasonStartsIn: 7 })).statusCode).toBe(412);
  });
});
