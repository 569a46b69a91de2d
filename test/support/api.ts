import { createApi } from '@sprigline/api';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { afterAll } from 'vitest';
import { type TestDatabase, testDatabase } from './database/test-database.ts';

export const BASE_URL = 'http://localhost:4150';
export const SECRET = 'only for tests, and thirty-two signs long';

export interface TestApi {
  readonly app: NestFastifyApplication;
  readonly database: TestDatabase;
}

/**
 * The API on a database of its own, to be asked with `app.inject`. Closed after the file.
 *
 *     const api = await testApi();
 *     const headers = await signedIn(api, 'coordinator', 'harrowdale');
 *     await api.app.inject({ method: 'POST', url: '/api/v1/programmes/harrowdale/stands', headers, payload });
 */
export async function testApi(settings: { baseUrl?: string; trustedProxies?: string[]; presentTime?: () => Date; requestsPerMinute?: number; log?: 'silent' | 'info' } = {}): Promise<TestApi> {
  const database = await testDatabase();
  const app = await createApi({
    port: 0, baseUrl: BASE_URL, secret: SECRET, databaseUrls: database, log: 'silent', ...settings,
  });
  afterAll(() => app.close());
  return { app, database };
}
