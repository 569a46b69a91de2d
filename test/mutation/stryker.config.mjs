// Small faults are planted in the formulas, one at a time; a test must fail for each. Part of `npm run test:long`; a folder by itself:
// npx stryker run test/mutation/stryker.config.mjs --mutate 'packages/domain/src/proportion/**/*.ts'
const FOLDERS = '{proportion,time,comparison,diversity,planning,layout,bench,distribution,matrix,random}';

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/mutation/vitest.config.mjs', related: true },
  mutate: [`packages/domain/src/${FOLDERS}/**/*.ts`, '!**/*.test.ts'],
  mutator: {
    // Words of refusals may change; their codes are asked for by the tests.
    excludedMutations: ['StringLiteral', 'ObjectLiteral'],
  },
  concurrency: 1,
  // A fault that keeps a halving from ending is found soon.
  timeoutMS: 1_500,
  reporters: ['progress-append-only', 'clear-text', 'json'],
  jsonReporter: { fileName: 'test-results/mutation.json' },
  thresholds: { high: 95, low: 85, break: 85 },
  ignorePatterns: ['apps', 'prisma', 'docker', 'test/e2e', 'test/year', '**/dist', '.ci'],
  tempDirName: 'test-results/mutation',
  allowEmpty: false,
};
