import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { asOwner, member, newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const BASE = '/api/v1/programmes/harrowdale';
const coordinator = await member(api, 'coordinator');
const ask = (method: 'GET' | 'POST' | 'DELETE', url: string, headers: Record<string, string>, payload?: object) =>
  api.app.inject({ method, url, headers, ...(payload ? { payload } : {}) });
const codeOf = (answer: { json(): { type?: string } }): string | undefined => answer.json().type?.replace('/problems/', '');

const make = (payload: object = {}, headers = coordinator.headers) =>
  ask('POST', `${BASE}/keys`, headers, { id: newId(), name: 'office spreadsheet', scopes: ['batches:read'], ...payload });
async function key(payload: object = {}): Promise<{ id: string; bearer: { authorization: string } }> {
  const { id, key } = (await make(payload)).json<{ id: string; key: string }>();
  return { id, bearer: { authorization: `Bearer ${key}` } };
}
const partner = async (): Promise<string> => {
  const id = newId();
  await ask('POST', `${BASE}/partners`, coordinator.headers, { id, name: `Lowmire school ${id}`, since: '2026-01-01', until: null });
  return id;
};

describe('a key', () => {
  test('is shown once, and of it only a hash and its start are kept', async () => {
    const payload = { id: newId() };
    const made = await make(payload);
    expect(made.json()).toMatchObject({ id: payload.id, key: expect.stringMatching(/^spr_[0-9A-Za-z]{36}$/) });
    expect(codeOf(await make(payload))).toBe('key/shown-before');

    const secret = made.json().key as string;
    const kept = await asOwner(api, (sql) => sql.query(`SELECT k::text AS row FROM key k UNION ALL SELECT a::text FROM audit a`));
    expect(kept.rows.map(({ row }) => row).join()).not.toContain(secret.slice(8));
    const listed = await ask('GET', `${BASE}/keys`, coordinator.headers);
    expect(listed.json()).toContainEqual(expect.objectContaining({ id: payload.id, start: secret.slice(0, 8), state: 'open', lastUsedAt: null, madeBy: coordinator.name }));
    expect(listed.body).not.toContain(secret.slice(8));
  });

  test('opens what its scopes say, and a refusal names the scope that is missing', async () => {
    const { bearer } = await key();
    expect((await ask('GET', `${BASE}/batches`, bearer)).statusCode).toBe(200);
    expect((await ask('GET', BASE, bearer)).statusCode).toBe(200);

    const stands = await ask('GET', `${BASE}/stands`, bearer);
    expect([stands.statusCode, stands.json().facts]).toEqual([403, { scope: 'stands:read' }]);
    const entries = await ask('POST', `${BASE}/entries`, bearer, { entries: [] });
    expect([codeOf(entries), entries.json().facts]).toEqual(['key/scope-needed', { scope: 'entries:write' }]);
    expect(codeOf(await ask('GET', `${BASE}/people`, bearer))).toBe('key/not-here');
    expect(codeOf(await ask('GET', '/api/v1/me', bearer))).toBe('key/not-here');
  });

  test('with a wrong letter is refused, with a hint how to come in', async () => {
    const { bearer } = await key();
    const last = bearer.authorization.at(-1) === 'a' ? 'b' : 'a';
    const typo = await ask('GET', `${BASE}/batches`, { authorization: bearer.authorization.slice(0, -1) + last });
    expect([typo.statusCode, codeOf(typo), typo.headers['www-authenticate']]).toEqual([401, 'key/not-a-key', 'Bearer realm="sprigline"']);
  });

  test('opens no other programme, and does not tell whether there is one', async () => {
    await signedIn(api, 'owner', 'winterbeck');
    const { bearer } = await key();
    const [other, none] = await Promise.all(['winterbeck', 'nowhere'].map((handle) => ask('GET', `/api/v1/programmes/${handle}/batches`, bearer)));
    expect([codeOf(other!), codeOf(none!)]).toEqual(['programme/unknown', 'programme/unknown']);
    expect(other!.json().detail).toBe(none!.json().detail);
  });

  test('that is revoked opens nothing from the next request on', async () => {
    const { id, bearer } = await key();
    expect((await ask('GET', `${BASE}/batches`, bearer)).statusCode).toBe(200);
    expect((await ask('DELETE', `${BASE}/keys/${id}`, coordinator.headers)).statusCode).toBe(204);
    expect((await ask('DELETE', `${BASE}/keys/${id}`, coordinator.headers)).statusCode).toBe(204);
    const refused = await ask('GET', `${BASE}/batches`, bearer);
    expect([refused.statusCode, codeOf(refused)]).toEqual([401, 'key/closed']);
    expect((await ask('GET', `${BASE}/keys`, coordinator.headers)).json()).toContainEqual(expect.objectContaining({ id, state: 'revoked', lastUsedAt: expect.stringMatching(/:00:00\.000Z$/) }));
  });

  test('ends on its day, and with the time of its partner', async () => {
    const { id, bearer } = await key();
    await asOwner(api, (sql) => sql.query(`UPDATE key SET expires_at = now() - interval '1 second' WHERE id = $1`, [id]));
    expect(codeOf(await ask('GET', `${BASE}/batches`, bearer))).toBe('key/closed');

    const partnerId = await partner();
    const theirs = await key({ partnerId });
    expect((await ask('GET', `${BASE}/batches`, theirs.bearer)).json()).toEqual([]);
    await asOwner(api, (sql) => sql.query(`UPDATE partner SET until = '2026-01-02' WHERE id = $1`, [partnerId]));
    expect(codeOf(await ask('GET', `${BASE}/batches`, theirs.bearer))).toBe('key/closed');
  });

  test('writes under a name of its own, which is nobody among the people', async () => {
    const { id, bearer } = await key({ name: 'weather post', scopes: ['trips:read', 'trips:write', 'stands:read'] });
    const standId = newId();
    await ask('POST', `${BASE}/stands`, coordinator.headers, { id: standId, name: 'Corran Ridge', partnerId: null, sensitivity: 0, note: null });
    const tripId = newId();
    const made = await ask('POST', `${BASE}/trips`, bearer, { id: tripId, wentOn: '2026-11-01', standId, permissionId: null, ledBy: null, people: 2, note: null });
    expect(made.statusCode).toBe(201);
    const { rows } = await asOwner(api, (sql) => sql.query('SELECT a.delivered_by, p.name FROM audit a JOIN person p ON p.id = a.person_id WHERE a.id = $1', [tripId]));
    expect(rows).toEqual([{ delivered_by: `key ${id}`, name: 'weather post' }]);
    expect((await ask('GET', `${BASE}/people`, coordinator.headers)).body).not.toContain('weather post');
  });

  test('of a partner can be let into nothing that is closed to partners', async () => {
    const answer = await make({ partnerId: await partner(), scopes: ['batches:read', 'trips:read'] });
    expect([answer.statusCode, answer.json().errors[0].pointer]).toEqual([422, '#/scopes']);
  });
});
