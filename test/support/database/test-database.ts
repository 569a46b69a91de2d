import { randomBytes } from 'node:crypto';
import { inject } from 'vitest';
import './global-setup.ts';
import { copyTemplate } from './template.ts';

/** Connection strings to one test file's own database, one a login. */
export interface TestDatabase {
  readonly name: string;
  /** Migrates; owns the tables; under forced row-level security like everybody. */
  readonly owner: string;
  /** What the API signs in as. */
  readonly app: string;
  /** What better-auth signs in as. */
  readonly auth: string;
  /** Backs up and verifies; sees all rows. */
  readonly keeper: string;
  /** Only for tests that damage the database on purpose. */
  readonly superuser: string;
}

/**
 * A migrated, empty database that nobody else uses. Call it once a file; nothing
 * needs to be cleaned up, because the server itself is removed after the run.
 *
 *     const database = await testDatabase();
 *     const pool = new pg.Pool({ connectionString: database.app });
 *     afterAll(() => pool.end());
 */
export async function testDatabase(): Promise<TestDatabase> {
  const address = inject('postgres');
  const name = `test_${randomBytes(6).toString('hex')}`;
  await copyTemplate(address, name);

  const urlOf = (template: string): string => Object.assign(new URL(template), { pathname: `/${name}` }).href;
  return {
    name,
    owner: urlOf(address.owner),
    app: urlOf(address.app),
    auth: urlOf(address.auth),
    keeper: urlOf(address.keeper),
    superuser: urlOf(address.superuser),
  };
}
