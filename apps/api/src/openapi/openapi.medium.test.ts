import { Validator } from '@seriousme/openapi-schema-validator';
import { ModulesContainer } from '@nestjs/core';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { testApi, type TestApi } from '../../../../test/support/api.ts';
import { routesOf } from './routes.ts';

let api: TestApi;
beforeAll(async () => {
  api = await testApi();
});

const served = async (): Promise<Record<string, unknown>> => (await api.app.inject({ method: 'GET', url: '/api/v1/openapi.json' })).json();

// `npm run openapi` renews the file; in CI a difference fails.
test('the committed description of the API is the one that is served', async () => {
  await expect(`${JSON.stringify(await served(), null, 2)}\n`).toMatchFileSnapshot(join(import.meta.dirname, '../../openapi.json'));
});

test('it is valid OpenAPI 3.1', async () => {
  expect(await new Validator().validate(await served())).toMatchObject({ valid: true });
});

// Nest's pipe lets a parameter through unchecked when its decorator names no schema.
test('every part of a request that a route reads is checked by a contract', () => {
  const routes = routesOf(api.app.get(ModulesContainer));

  expect(routes.length).toBeGreaterThan(50);
  expect(routes.filter(({ asks }) => Object.values(asks.parts).some((schema) => schema === undefined)).map(({ name }) => name)).toEqual([]);
});
