import { describe, expect, test } from 'vitest';
import { createApi } from '../start.ts';
import { BASE_URL, SECRET, testApi } from '../../../../test/support/api.ts';
import { newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const { cookie } = await signedIn(api, 'owner');
const URL_OF_PEOPLE = '/api/v1/programmes/harrowdale/people';

const add = (headers: Record<string, string>) =>
  api.app.inject({ method: 'POST', url: URL_OF_PEOPLE, headers: { cookie, ...headers }, payload: { id: newId(), name: 'Somebody' } });

describe('changes that another site makes', () => {
  test.each([
    ['a form on another site', { 'sec-fetch-site': 'cross-site', origin: 'https://evil.example' }],
    ['another host of the same domain', { 'sec-fetch-site': 'same-site', origin: 'http://other.localhost:4150' }],
    ['a site that lies about nothing but its origin', { origin: 'https://evil.example' }],
    ['a sandboxed frame', { origin: 'null' }],
    ['nobody who says where they are', {}],
  ])('%s: refused', async (_, headers) => {
    const answer = await add(headers as Record<string, string>);
    expect([answer.statusCode, answer.json().type]).toEqual([403, '/problems/http/other-site']);
  });

  test.each([
    ['our own page', { 'sec-fetch-site': 'same-origin' }],
    ['the address bar', { 'sec-fetch-site': 'none' }],
    ['our own page by plain http', { origin: BASE_URL }],
    ['our own page under the address of the local network', { origin: 'http://192.0.2.10:3000', host: '192.0.2.10:3000' }],
  ])('%s: done', async (_, headers) => {
    expect((await add(headers as Record<string, string>)).statusCode).toBe(201);
  });

  test.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x'])('a body of %s is refused', async (type) => {
    const answer = await api.app.inject({ method: 'POST', url: URL_OF_PEOPLE, headers: { cookie, origin: BASE_URL, 'content-type': type }, payload: '{"a":1}' });
    expect([answer.statusCode, answer.json().type]).toEqual([415, '/problems/http/json-only']);
  });
});

describe('every answer of the API', () => {
  const post = { method: 'POST', headers: { cookie, origin: BASE_URL, 'content-type': 'application/json' } } as const;
  test.each([
    ['a good one', 200, { url: '/api/v1/me', headers: { cookie } }],
    ['no session', 401, { url: '/api/v1/me' }],
    ['no such route', 404, { url: '/api/v1/nothing-here' }],
    ['no such route outside v1', 404, { url: '/api/nothing' }],
    ['another method', 404, { method: 'PUT', url: '/api/v1/me', headers: { origin: BASE_URL } }],
    ['broken JSON', 400, { ...post, url: URL_OF_PEOPLE, payload: '{"id":' }],
    ['no JSON at all', 415, { ...post, headers: { ...post.headers, 'content-type': 'application/xml' }, url: URL_OF_PEOPLE, payload: '<a/>' }],
    ['too much', 413, { ...post, url: URL_OF_PEOPLE, payload: JSON.stringify({ name: 'x'.repeat(3_000_000) }) }],
    ['an unfit body', 422, { ...post, url: URL_OF_PEOPLE, payload: '{"id":1,"more":2}' }],
    ['an unfit path', 404, { url: '/api/v1/programmes/NOT%20A%20HANDLE', headers: { cookie } }],
    ['a path that is no text', 400, { url: '/api/v1/programmes/%E0%A4%A', headers: { cookie } }],
    ['a read of the sign-in doors', 404, { url: '/api/auth/get-session', headers: { cookie } }],
    ['broken JSON at the sign-in doors', 422, { ...post, url: '/api/auth/sign-in/email', payload: '{' }],
    ['too much at the sign-in doors', 413, { ...post, url: '/api/auth/sign-in/email', payload: JSON.stringify({ email: 'x'.repeat(20_000) }) }],
  ] as const)('%s: is a problem if not good, and says that it is data for this site only', async (_, status, request) => {
    const answer = await api.app.inject(request as never);
    expect(answer.statusCode).toBe(status);
    expect(answer.headers).toMatchObject({
      'content-security-policy': expect.stringContaining(`default-src 'none'`),
      'x-content-type-options': 'nosniff',
      'cache-control': 'no-store',
      'referrer-policy': 'no-referrer',
      'cross-origin-resource-policy': 'same-origin',
      'x-request-id': expect.stringMatching(/^[\da-f-]{36}$/),
    });
    expect(answer.headers['content-type']).toContain(status < 400 ? 'application/json' : 'application/problem+json');
    if (status >= 400) {
      expect(answer.json()).toMatchObject({ status, title: expect.any(String), type: expect.any(String), instance: `urn:request:${answer.headers['x-request-id']}` });
      expect(answer.body).not.toMatch(/node_modules|at \w+ \(|SELECT|pg_/);
    }
  });
});

describe('pages', () => {
  test('carry a stamp of where they were asked from, which counts for the API and cannot be made by hand', async () => {
    const seen: Record<string, unknown>[] = [];
    const app = await createApi(
      { port: 0, baseUrl: BASE_URL, secret: SECRET, databaseUrls: api.database, photoFolder: api.photoFolder, log: 'silent' },
      (request, response) => {
        seen.push(request.headers);
        response.end('a page');
        return Promise.resolve();
      },
    );
    try {
      await app.inject({ url: '/sign-in', remoteAddress: '192.0.2.44', headers: { 'x-sprigline-asked-from': '198.51.100.1 forged' } });
      const stamp = String(seen[0]!['x-sprigline-asked-from']);
      expect(stamp).toMatch(/^192\.0\.2\.44 [\w-]{43}$/);

      const asked = (headers: Record<string, string>) =>
        app.inject({ method: 'POST', url: URL_OF_PEOPLE, headers: { cookie, ...headers }, payload: { id: newId(), name: 'Somebody' } });
      expect((await asked({ 'x-sprigline-asked-from': stamp })).statusCode).toBe(201);
      expect((await asked({ 'x-sprigline-asked-from': stamp.replace('44', '45') })).statusCode).toBe(403);

      const crossed = await app.inject({ method: 'POST', url: '/sign-in', headers: { cookie, origin: 'https://evil.example', 'content-type': 'text/plain' }, payload: 'x' });
      expect(crossed.statusCode).toBe(403);
      expect(seen).toHaveLength(1);
    } finally {
      await app.close();
    }
  });
});
