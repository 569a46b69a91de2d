import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { asOwner, member, newId, signedIn } from '../../../../test/support/people.ts';
import { makeResetLink } from '../sign-in/links-from-the-machine.ts';

const api = await testApi();
const BASE = '/api/v1/programmes/harrowdale';
const ORIGIN = { origin: 'http://localhost:4150' };
const PASSWORD = 'juniper on the ridge';
const owner = await member(api, 'owner');
const coordinator = await member(api, 'coordinator');

type Headers = Record<string, string>;
const ask = (method: 'GET' | 'POST' | 'DELETE', url: string, headers: Headers = ORIGIN, payload?: object) =>
  api.app.inject({ method, url, headers, ...(payload ? { payload } : {}) });
const codeOf = (answer: { json(): { type?: string } }): string | undefined => answer.json().type?.replace('/problems/', '');
const tokenOf = (answer: { json(): { link: string } }): string => answer.json().link.split('/').at(-1)!;

const invite = (payload: object, headers: Headers = owner.headers) =>
  ask('POST', `${BASE}/invitations`, headers, { id: newId(), forName: 'Ada', role: 'volunteer', ...payload });

async function signIn(email: string, password: string): Promise<{ status: number; headers: Headers }> {
  const answer = await ask('POST', '/api/auth/sign-in/email', ORIGIN, { email, password });
  return { status: answer.statusCode, headers: { ...ORIGIN, cookie: String(answer.headers['set-cookie'] ?? '').split(';')[0]! } };
}

describe('an invitation', () => {
  test('tells its holder programme and role, and lets them in once with a new account', async () => {
    const made = await invite({ seesExact: true });
    expect(made.json().link).toMatch(/^http:\/\/localhost:4150\/invitation\/[\w-]{43}$/);
    const url = `/api/v1/invitations/${tokenOf(made)}`;
    expect((await ask('GET', url)).json()).toEqual({ programme: 'The harrowdale programme', role: 'volunteer' });

    const account = { name: 'Ada', email: 'Ada@example.org', password: PASSWORD };
    expect((await ask('POST', `${url}/account`, ORIGIN, { ...account, password: 'short' })).statusCode).toBe(422);
    const answers = await Promise.all([account, { ...account, email: 'else@example.org' }].map((body) => ask('POST', `${url}/account`, ORIGIN, body)));
    expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([201, 404]);
    expect(codeOf(await ask('GET', url))).toBe('link/closed');

    const email = answers[0]!.statusCode === 201 ? 'ada@example.org' : 'else@example.org';
    const { headers } = await signIn(email, PASSWORD);
    expect((await ask('GET', '/api/v1/me', headers)).json().programmes).toMatchObject([{ handle: 'harrowdale', role: 'volunteer' }]);
    const accounts = await asOwner(api, (sql) => sql.query(`SELECT FROM auth."user" WHERE email IN ('ada@example.org', 'else@example.org')`));
    expect(accounts.rowCount).toBe(1);
  });

  test('sent twice answers one link, of which the database keeps the hash only', async () => {
    const payload = { id: newId() };
    const [one, two] = await Promise.all([invite(payload), invite(payload)]);
    expect(two.json()).toEqual(one.json());
    expect(codeOf(await invite({ ...payload, role: 'coordinator' }))).toBe('invitation/id-reused');
    const kept = await asOwner(api, (sql) => sql.query('SELECT i::text AS row FROM invitation i WHERE id = $1', [payload.id]));
    expect(kept.rows[0].row).not.toContain(tokenOf(one));
    const listed = (await ask('GET', `${BASE}/invitations`, coordinator.headers)).json();
    expect(listed).toContainEqual(expect.objectContaining({ id: payload.id, state: 'open', madeBy: owner.name }));
    expect(JSON.stringify(listed)).not.toContain(tokenOf(one));
  });

  test('is accepted by somebody signed in elsewhere, once', async () => {
    const stranger = await member(api, 'volunteer', 'winterbeck');
    const [one, two] = [tokenOf(await invite({ role: 'coordinator' })), tokenOf(await invite({}))];
    expect((await ask('POST', `/api/v1/invitations/${one}/acceptance`)).statusCode).toBe(401);
    expect((await ask('POST', `/api/v1/invitations/${one}/acceptance`, stranger.headers)).json()).toEqual({ programme: 'harrowdale' });
    expect((await ask('GET', `${BASE}/invitations`, stranger.headers)).statusCode).toBe(200);
    expect(codeOf(await ask('POST', `/api/v1/invitations/${two}/acceptance`, stranger.headers))).toBe('invitation/already-member');
  });

  test('gives somebody known by name their account, under the same name', async () => {
    const personId = newId();
    await ask('POST', `${BASE}/people`, coordinator.headers, { id: personId, name: 'Tam' });
    const token = tokenOf(await invite({ personId, forName: 'Tam' }, coordinator.headers));
    expect((await ask('POST', `/api/v1/invitations/${token}/account`, ORIGIN, { name: 'Tam T', email: 'tam@example.org', password: PASSWORD })).statusCode).toBe(201);
    expect((await ask('GET', `${BASE}/people/${personId}`, owner.headers)).json()).toMatchObject({ name: 'Tam', role: 'volunteer', hasAccount: true });
    expect(codeOf(await invite({ personId }))).toBe('person/has-account');
  });

  test('with an e-mail that has an account changes nothing', async () => {
    const token = tokenOf(await invite({}));
    const { rows } = await asOwner(api, (sql) => sql.query('SELECT email FROM auth."user" WHERE id = $1', [owner.userId]));
    expect(codeOf(await ask('POST', `/api/v1/invitations/${token}/account`, ORIGIN, { name: 'X', email: rows[0].email, password: PASSWORD }))).toBe('sign-in/email-taken');
    expect((await ask('GET', `/api/v1/invitations/${token}`)).statusCode).toBe(200);
  });

  test('opens nothing once withdrawn, expired, or when its maker has left or fallen in rank', async () => {
    const open = async (token: string) => (await ask('GET', `/api/v1/invitations/${token}`)).statusCode;
    const id = newId();
    const withdrawn = tokenOf(await invite({ id }));
    expect((await ask('DELETE', `${BASE}/invitations/${id}`, coordinator.headers)).statusCode).toBe(204);
    expect((await ask('DELETE', `${BASE}/invitations/${id}`, coordinator.headers)).statusCode).toBe(204);
    expect(await open(withdrawn)).toBe(404);

    const maker = await member(api, 'owner');
    const [forVolunteer, forOwner] = [tokenOf(await invite({}, maker.headers)), tokenOf(await invite({ role: 'owner' }, maker.headers))];
    await asOwner(api, (sql) => sql.query(`UPDATE person SET role = 'coordinator' WHERE id = $1`, [maker.personId]));
    expect([await open(forVolunteer), await open(forOwner)]).toEqual([200, 404]);
    await asOwner(api, (sql) => sql.query('UPDATE person SET left_at = now() WHERE id = $1', [maker.personId]));
    expect(await open(forVolunteer)).toBe(404);

    const expired = newId();
    const token = tokenOf(await invite({ id: expired }));
    await asOwner(api, (sql) => sql.query(`UPDATE invitation SET expires_at = now() WHERE id = $1`, [expired]));
    expect(await open(token)).toBe(404);
    expect(await open('never-made')).toBe(404);
  });

  test('of coordinators and owners is for owners to make', async () => {
    expect(codeOf(await invite({ role: 'coordinator' }, coordinator.headers))).toBe('person/not-yours-to-manage');
    expect((await invite({}, await signedIn(api, 'volunteer'))).statusCode).toBe(403);
    expect((await invite({ role: 'partner' })).statusCode).toBe(422);
    expect(codeOf(await invite({ role: 'partner', partnerId: newId() }))).toBe('record/unknown');
  });
});

describe('a reset link', () => {
  const reset = (personId: string, headers: Headers) => ask('POST', `${BASE}/people/${personId}/reset-links`, headers, { id: newId() });

  async function withPassword(email: string) {
    const token = tokenOf(await invite({}));
    await ask('POST', `/api/v1/invitations/${token}/account`, ORIGIN, { name: 'Dee', email, password: PASSWORD });
    const { headers } = await signIn(email, PASSWORD);
    const { programmes } = (await ask('GET', '/api/v1/me', headers)).json();
    return { personId: programmes[0].personId as string, headers };
  }

  test('sets a new password once, and ends every session of the account', async () => {
    const dee = await withPassword('dee@example.org');
    const [first, second] = [tokenOf(await reset(dee.personId, coordinator.headers)), tokenOf(await reset(dee.personId, coordinator.headers))];
    expect((await ask('GET', `/api/v1/reset-links/${first}`)).json()).toEqual({ programme: 'The harrowdale programme', name: 'Dee' });

    const use = (token: string, password: string) => ask('POST', `/api/v1/reset-links/${token}`, ORIGIN, { password });
    const answers = await Promise.all([use(first, 'yew and juniper one'), use(first, 'yew and juniper two')]);
    expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([204, 404]);
    expect(codeOf(await use(second, 'yew and juniper three'))).toBe('link/closed');

    expect((await ask('GET', '/api/v1/me', dee.headers)).statusCode).toBe(401);
    expect((await signIn('dee@example.org', PASSWORD)).status).toBe(401);
    const chosen = answers[0]!.statusCode === 204 ? 'yew and juniper one' : 'yew and juniper two';
    expect((await signIn('dee@example.org', chosen)).status).toBe(204);
    const acts = await asOwner(api, (sql) => sql.query(`SELECT act FROM audit WHERE person_id = $1 AND act = 'reset-link.used'`, [dee.personId]));
    expect(acts.rowCount).toBe(1);
  });

  test('is made by those who answer for the account wherever it works', async () => {
    const volunteer = await member(api, 'volunteer');
    expect((await reset(volunteer.personId, coordinator.headers)).statusCode).toBe(201);
    expect(codeOf(await reset(owner.personId, coordinator.headers))).toBe('person/not-yours-to-manage');

    const elsewhere = await member(api, 'owner', 'lowmire');
    await asOwner(api, (sql) =>
      sql.query(`INSERT INTO person (programme_id, id, name, user_id, role) VALUES ($1, $2, 'V', $3, 'owner')`, [elsewhere.programmeId, newId(), volunteer.userId]));
    expect(codeOf(await reset(volunteer.personId, owner.headers))).toBe('person/works-elsewhere-too');
  });

  test('opens nothing any more when its maker has left', async () => {
    const [maker, volunteer] = [await member(api, 'coordinator'), await member(api, 'volunteer')];
    const token = tokenOf(await reset(volunteer.personId, maker.headers));
    expect((await ask('GET', `/api/v1/reset-links/${token}`)).statusCode).toBe(200);
    await ask('DELETE', `${BASE}/people/${maker.personId}`, owner.headers);
    expect((await ask('GET', `/api/v1/reset-links/${token}`)).statusCode).toBe(404);
  });

  test('can be made on the machine itself, for an owner whom nobody else can let in', async () => {
    const install = { databaseUrls: api.database, baseUrl: 'http://localhost:4150' };
    const { rows } = await asOwner(api, (sql) => sql.query('SELECT email FROM auth."user" WHERE id = $1', [owner.userId]));
    const link = await makeResetLink(install, rows[0].email.toUpperCase());
    expect((await ask('GET', `/api/v1/reset-links/${link!.split('/').at(-1)}`)).json()).toMatchObject({ name: owner.name });
    expect(await makeResetLink(install, 'nobody@example.org')).toBeUndefined();
  });
});
