import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Packages are read from their sources, never from a `dist` that may be old. */
const conditions = ['source', 'module', 'node', 'development|production'];

const SOURCES = '{apps,packages,prisma,test}';
const WITHOUT_DATABASE = ['test/load/numbers.load.ts', 'test/load/labels.load.ts', 'test/load/slow-phone.load.ts'];
const NEVER = ['**/node_modules/**', '**/dist/**', '**/.next/**', '**/generated/**'];

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  resolve: { conditions },
  ssr: { resolve: { conditions, externalConditions: conditions } },
  test: {
    // On two cores vitest would use one; half of a medium test is waiting for its database.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      {
        extends: true,
        test: {
          name: 'small',
          include: [`${SOURCES}/**/*.test.ts`],
          exclude: [...NEVER, '**/*.medium.test.ts', '**/*.long.test.ts', 'test/tidy/**'],
          pool: 'threads',
          isolate: false,
          setupFiles: ['test/support/draws.ts'],
          // Properties take a second or two by themselves; on a busy machine that must not look like a fault.
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'medium',
          include: [`${SOURCES}/**/*.medium.test.ts`],
          exclude: [...NEVER, 'test/tidy/**'],
          // Every file has a database and an API of its own, and no test replaces a module of ours: what is imported may be shared.
          isolate: false,
          setupFiles: ['test/support/draws.ts'],
          globalSetup: ['test/support/database/global-setup.ts'],
          testTimeout: 20_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'long',
          include: [`${SOURCES}/**/*.long.test.ts`],
          exclude: NEVER,
          globalSetup: ['test/support/database/global-setup.ts'],
          fileParallelism: false,
          testTimeout: 900_000,
          hookTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'load',
          include: ['test/load/*.load.ts'],
          exclude: [...NEVER, ...WITHOUT_DATABASE],
          globalSetup: ['test/load/load-server.ts'],
          fileParallelism: false,
          testTimeout: 900_000,
          hookTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          // These need no database.
          name: 'numbers',
          include: WITHOUT_DATABASE,
          pool: 'forks',
          execArgv: ['--expose-gc'],
          testTimeout: 900_000,
          hookTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'tidy',
          include: ['test/tidy/**/*.test.ts'],
          exclude: NEVER,
          globalSetup: ['test/support/database/global-setup.ts'],
          testTimeout: 60_000,
        },
      },
    ],
  },
});
