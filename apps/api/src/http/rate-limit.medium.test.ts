import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { keyOf } from '../../../../test/support/keys.ts';
import { signedIn } from '../../../../test/support/people.ts';

const api = await testApi({ requestsPerMinute: 5 });
const get = (headers: Record<string, string>, path = '') => api.app.inject({ method: 'GET', url: `/api/v1/programmes/harrowdale${path}`, headers });

test('each caller is told what is left, and waits when nothing is; others do not', async () => {
  const [ada, bea] = [await signedIn(api, 'volunteer'), await signedIn(api, 'volunteer')];
  const first = await get(ada);
  expect(first.headers).toMatchObject({ 'ratelimit-policy': '"person";q=5;w=60', ratelimit: expect.stringMatching(/^"person";r=4;t=\d+$/) });
  for (let more = 0; more < 4; more += 1) await get(ada);

  const refused = await get(ada);
  expect([refused.statusCode, refused.json().type]).toEqual([429, '/problems/http/quota-exceeded']);
  const [, t] = /t=(\d+)/.exec(String(refused.headers['ratelimit']))!;
  expect(Number(refused.headers['retry-after'])).toBeGreaterThanOrEqual(Number(t));
  expect((await get(bea)).statusCode).toBe(200);
});

test('a key is counted for itself, also where it is let into nothing', async () => {
  const key = await keyOf(api, { scopes: ['batches:read'] });
  const answers = [];
  for (let n = 0; n < 6; n += 1) answers.push((await get(key, '/stands')).statusCode);
  expect(answers).toEqual([403, 403, 403, 403, 403, 429]);
});

test('whoever nobody knows is counted by address', async () => {
  const answers = [];
  for (let n = 0; n < 6; n += 1) answers.push(await get({}));
  expect(answers.map(({ statusCode }) => statusCode)).toEqual([401, 401, 401, 401, 401, 429]);
  expect(answers[0]!.headers['ratelimit-policy']).toBe('"address";q=5;w=60');
});
