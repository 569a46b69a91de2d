import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { asOwner, member, newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const BASE = '/api/v1/programmes/harrowdale';
const owner = await member(api, 'owner');
const coordinator = await member(api, 'coordinator');

type Headers = Record<string, string>;
const ask = (method: 'GET' | 'POST' | 'PATCH' | 'DELETE', url: string, headers: Headers, payload?: object) =>
  api.app.inject({ method, url: `${BASE}${url}`, headers, ...(payload ? { payload } : {}) });

const codeOf = (answer: { json(): { type?: string } }): string | undefined => answer.json().type?.replace('/problems/', '');

async function change(headers: Headers, personId: string, payload: object) {
  const etag = (await ask('GET', `/people/${personId}`, headers)).headers['etag'];
  return ask('PATCH', `/people/${personId}`, { ...headers, 'if-match': String(etag) }, payload);
}

const actsOn = (id: string) =>
  asOwner(api, async (sql) => (await sql.query<{ act: string }>('SELECT act FROM audit WHERE subject_id = $1 ORDER BY at', [id])).rows.map(({ act }) => act));

describe('the list of people', () => {
  test('tells a coordinator the roles, and a volunteer the names of the programme’s own', async () => {
    const partner = await member(api, 'partner');
    const seen = (await ask('GET', '/people', coordinator.headers)).json();
    expect(seen).toContainEqual(expect.objectContaining({ id: partner.personId, role: 'partner', hasAccount: true }));

    const names = (await ask('GET', '/people', await signedIn(api, 'volunteer'))).json();
    expect(names).toContainEqual({ id: owner.personId, name: owner.name });
    expect(names.flatMap(Object.keys).sort().filter((key: string) => key !== 'id' && key !== 'name')).toEqual([]);
    expect(names.map(({ id }: { id: string }) => id)).not.toContain(partner.personId);

    expect((await ask('GET', '/people', partner.headers)).statusCode).toBe(403);
  });

  test('grows by names, once however often one is sent', async () => {
    const payload = { id: newId(), name: 'Tam of the Wednesday group' };
    const answers = await Promise.all([1, 2, 3].map(() => ask('POST', '/people', coordinator.headers, payload)));
    expect(answers.map(({ statusCode }) => statusCode)).toEqual([201, 201, 201]);
    expect(answers[0]!.json()).toMatchObject({ name: payload.name, role: null, hasAccount: false });
    expect(codeOf(await ask('POST', '/people', coordinator.headers, { ...payload, name: 'Tim' }))).toBe('person/id-reused');
    expect(await actsOn(payload.id)).toEqual(['person.made']);
  });
});

describe('roles', () => {
  test('of volunteers are a coordinator’s to set up to volunteer, and no higher', async () => {
    const volunteer = await member(api, 'volunteer');
    expect((await change(coordinator.headers, volunteer.personId, { seesExact: true })).json()).toMatchObject({ seesExact: true });
    expect(codeOf(await change(coordinator.headers, volunteer.personId, { role: 'coordinator' }))).toBe('person/not-yours-to-manage');
    expect(codeOf(await change(coordinator.headers, owner.personId, { role: 'volunteer' }))).toBe('person/not-yours-to-manage');
    expect((await change(owner.headers, volunteer.personId, { role: 'coordinator' })).json()).toMatchObject({ role: 'coordinator' });
    expect(await actsOn(volunteer.personId)).toEqual(['person.changed', 'person.changed']);
  });

  test('are not for names without an account, nor for people of a partner', async () => {
    const [named, partner] = [newId(), await member(api, 'partner')];
    await ask('POST', '/people', owner.headers, { id: named, name: 'Only a name' });
    expect(codeOf(await change(owner.headers, named, { role: 'volunteer' }))).toBe('person/no-account');
    expect(codeOf(await change(owner.headers, partner.personId, { role: 'volunteer' }))).toBe('person/of-a-partner');
    expect((await change(owner.headers, partner.personId, { role: 'partner' })).statusCode).toBe(422);
  });

  test('a change on what somebody else has changed meanwhile is refused', async () => {
    const { personId } = await member(api, 'volunteer');
    const etag = String((await ask('GET', `/people/${personId}`, owner.headers)).headers['etag']);
    await change(owner.headers, personId, { name: 'Renamed' });
    expect((await ask('PATCH', `/people/${personId}`, { ...owner.headers, 'if-match': etag }, { name: 'Again' })).statusCode).toBe(412);
    expect((await ask('PATCH', `/people/${personId}`, owner.headers, { name: 'Again' })).statusCode).toBe(428);
  });
});

describe('leaving', () => {
  test('is effective with the very next request, here and nowhere else', async () => {
    const volunteer = await member(api, 'volunteer');
    await asOwner(api, async (sql) => {
      const id = newId();
      await sql.query(`INSERT INTO programme (id, handle, name, zone) VALUES ($1, 'lowmire', 'Lowmire', 'Europe/London')`, [id]);
      await sql.query(`INSERT INTO person (programme_id, id, name, user_id, role) VALUES ($1, $2, 'V', $3, 'volunteer')`, [id, newId(), volunteer.userId]);
    });
    expect((await ask('GET', '', volunteer.headers)).statusCode).toBe(200);
    expect((await ask('DELETE', `/people/${volunteer.personId}`, coordinator.headers)).statusCode).toBe(204);
    expect((await ask('GET', '', volunteer.headers)).statusCode).toBe(404);
    expect((await api.app.inject({ url: '/api/v1/programmes/lowmire', headers: volunteer.headers })).statusCode).toBe(200);
    expect((await ask('DELETE', `/people/${volunteer.personId}`, coordinator.headers)).statusCode).toBe(404);
    expect(await actsOn(volunteer.personId)).toEqual(['person.removed']);
  });

  test('a volunteer may leave, and remove nobody else', async () => {
    const [one, other] = [await member(api, 'volunteer'), await member(api, 'volunteer')];
    expect((await ask('DELETE', `/people/${other.personId}`, one.headers)).statusCode).toBe(403);
    expect((await ask('DELETE', `/people/${newId()}`, one.headers)).statusCode).toBe(403);
    expect((await ask('DELETE', `/people/${one.personId}`, one.headers)).statusCode).toBe(204);
    expect(codeOf(await ask('DELETE', `/people/${owner.personId}`, coordinator.headers))).toBe('person/not-yours-to-manage');
  });

  test('the last owner stays, also when two owners remove each other at once', async () => {
    const [one, two] = [await member(api, 'owner', 'thornber'), await member(api, 'owner', 'thornber')];
    const remove = (who: typeof one, whom: typeof one) => api.app.inject({ method: 'DELETE', url: `/api/v1/programmes/thornber/people/${whom.personId}`, headers: who.headers });
    const answers = await Promise.all([remove(one, two), remove(two, one)]);
    const statuses = answers.map(({ statusCode }) => statusCode).sort();
    // The second finds either that it would leave nobody, or that it works there no longer.
    expect(statuses[0]).toBe(204);
    expect([404, 409]).toContain(statuses[1]);

    const left = await asOwner(api, (sql) => sql.query(`SELECT user_id FROM person WHERE programme_id = $1 AND role = 'owner' AND left_at IS NULL`, [one.programmeId]));
    expect(left.rowCount).toBe(1);
    const last = left.rows[0].user_id === one.userId ? one : two;
    expect(codeOf(await remove(last, last))).toBe('person/last-owner');
    const etag = String((await api.app.inject({ url: `/api/v1/programmes/thornber/people/${last.personId}`, headers: last.headers })).headers['etag']);
    const demoted = await api.app.inject({ method: 'PATCH', url: `/api/v1/programmes/thornber/people/${last.personId}`, headers: { ...last.headers, 'if-match': etag }, payload: { role: 'volunteer' } });
    expect(codeOf(demoted)).toBe('person/last-owner');
  });

  test('a partner’s people are shut out when the relation ends', async () => {
    const partner = await member(api, 'partner');
    expect((await ask('GET', '', partner.headers)).statusCode).toBe(200);
    await asOwner(api, (sql) => sql.query(`UPDATE partner SET until = current_date - 2 WHERE id = (SELECT partner_id FROM person WHERE id = $1)`, [partner.personId]));
    expect((await ask('GET', '', partner.headers)).statusCode).toBe(404);
    expect((await api.app.inject({ url: '/api/v1/me', headers: partner.headers })).json()).toMatchObject({ programmes: [] });
  });
});

test('owners read who did what, in parts, newest first', async () => {
  const first = await ask('GET', '/audit?limit=2', owner.headers);
  expect(first.json()).toHaveLength(2);
  const next = /<([^>]+)>; rel="next"/.exec(String(first.headers['link']))![1]!;
  const second = (await api.app.inject({ url: next, headers: owner.headers })).json();
  expect(second.length).toBeGreaterThan(0);
  expect(second[0].at <= first.json()[1].at).toBe(true);
  expect((await ask('GET', '/audit', coordinator.headers)).statusCode).toBe(403);
});
