import { createApi } from '@sprigline/api';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { afterAll } from 'vitest';
import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type TestDatabase, testDatabase } from './database/test-database.ts';

export const BASE_URL = 'http://localhost:4150';
export const SECRET = 'only for tests, and thirty-two signs long';

export interface TestApi {
  readonly app: NestFastifyApplication;
  readonly database: TestDatabase;
  /** Where its photos lie. */
  readonly photoFolder: string;
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
  const photoFolder = join(tmpdir(), `sprigline-photos-${randomUUID()}`);
  const app = await createApi({
    port: 0, baseUrl: BASE_URL, secret: SECRET, databaseUrls: database, photoFolder, log: 'silent', ...settings,
  });
  afterAll(async () => {
    await app.close();
    await rm(photoFolder, { recursive: true, force: true });
  });
  return { app, database, photoFolder };
}
