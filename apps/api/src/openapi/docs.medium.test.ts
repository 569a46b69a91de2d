import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';

const api = await testApi();
const answer = await api.app.inject({ method: 'GET', url: '/api/v1/docs' });

test('the page tells of every operation, with a line that can be pasted', async () => {
  const { paths } = (await api.app.inject({ method: 'GET', url: '/api/v1/openapi.json' })).json<{ paths: Record<string, Record<string, { operationId: string }>> }>();
  const operations = Object.values(paths).flatMap((methods) => Object.values(methods));

  expect(answer.headers['content-type']).toBe('text/html; charset=utf-8');
  expect(operations.filter(({ operationId }) => !answer.body.includes(`<article id="${operationId}">`))).toEqual([]);
  expect(answer.body.match(/<code>curl /g)?.length).toBe(operations.length);
});

test('it asks nothing of anybody else, runs nothing, and every link in it leads somewhere', () => {
  expect(answer.headers['content-security-policy']).toMatch(/^default-src 'none'; style-src 'sha256-[^']+'; frame-ancestors 'none'/);
  expect(answer.body).not.toMatch(/<script|<link|<img|\bsrc=|\son\w+=/);
  const ids = new Set([...answer.body.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
  expect([...answer.body.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id).filter((id) => !ids.has(id))).toEqual([]);
});
