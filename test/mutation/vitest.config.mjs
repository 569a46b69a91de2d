import { defineConfig } from 'vitest/config';

/** The formulas' own tests and no others: a mutant lives or dies by them alone. */
export default defineConfig({
  test: {
    include: ['packages/domain/src/{proportion,time,comparison,diversity,planning,layout,bench,distribution,matrix,random}/**/*.test.ts'],
    setupFiles: ['test/support/draws.ts'],
    pool: 'threads',
    isolate: false,
    testTimeout: 60_000,
  },
});
