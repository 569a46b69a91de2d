// Used as `eslint --config test/tidy/eslint.config.mjs .` from the root.
import js from '@eslint/js';
import { fileURLToPath } from 'node:url';
import ts from 'typescript-eslint';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const TESTS = ['**/*.test.ts', '**/*.spec.ts', 'test/**'];

/** A clock and dice are arguments; else no result could be had twice. */
const NO_CLOCK_NO_DICE = [
  { object: 'Date', property: 'now', message: 'Time is an argument.' },
  { object: 'Math', property: 'random', message: 'Randomness is an argument, and seeded.' },
];

/** Next puts NODE_ENV in when it builds, so that one is no setting. */
const ENVIRONMENT = {
  selector: ':not(MemberExpression[property.name="NODE_ENV"]) > MemberExpression[object.name="process"][property.name="env"]',
  message: 'Settings are read once, in config/ or in apps/start.',
};

export default ts.config(
  { ignores: ['**/node_modules/', '**/dist/', '**/.next/', '**/generated/', '**/*.d.ts', '.data/', 'test-results/', 'apps/web/public/sw.js'] },
  js.configs.recommended,
  ts.configs.strict,
  ts.configs.stylistic,
  {
    languageOptions: { globals: nodeGlobals() },
    rules: {
      eqeqeq: 'error',
      'no-console': 'error',
      'prefer-const': 'error',
      'object-shorthand': 'error',
      'no-param-reassign': 'off',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/array-type': 'off',
      '@typescript-eslint/no-empty-function': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true }],
      // Nest finds a module by its class, however empty the class is.
      '@typescript-eslint/no-extraneous-class': ['error', { allowWithDecorator: true }],
      'no-restricted-syntax': ['error', ENVIRONMENT],
    },
  },
  {
    name: 'domain: time and randomness are arguments',
    files: ['packages/domain/src/**/*.ts'],
    ignores: TESTS,
    rules: {
      'no-restricted-properties': ['error', ...NO_CLOCK_NO_DICE],
      'no-restricted-syntax': [
        'error',
        ENVIRONMENT,
        { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: 'Time is an argument.' },
        { selector: 'CallExpression[callee.name="Date"]', message: 'Time is an argument.' },
      ],
    },
  },
  {
    name: 'domain: loops over rows and columns know their bounds, and a check at each step would hide the formula',
    files: ['packages/domain/src/{matrix,distribution,time,comparison,layout}/**/*.ts'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    name: 'a promise that nobody waits for swallows its error',
    files: ['apps/api/src/**/*.ts', 'apps/start/**/*.mjs'],
    ignores: TESTS,
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: ROOT } },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
    },
  },
  {
    name: 'the launcher and the settings read the environment and speak to a terminal',
    files: ['apps/start/**', 'docker/steps/**', 'apps/api/src/config/**', 'apps/web/lib/settings.ts', 'apps/web/lib/offline-setting.ts', 'apps/*/*.config.*', 'prisma/*.mjs', 'prisma/*.ts', 'prisma/seed/**'],
    rules: { 'no-restricted-syntax': 'off', 'no-console': 'off' },
  },
  {
    name: 'plain JavaScript says its types in comments, which the compiler reads',
    files: ['**/*.mjs', '**/*.cjs'],
    rules: { '@typescript-eslint/no-require-imports': 'off' },
  },
  {
    name: 'tests may be sure of what they have made',
    files: TESTS,
    rules: {
      'no-console': 'off',
      'no-restricted-properties': 'off',
      'no-restricted-syntax': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
    },
  },
);

/**
 * The compiler knows undefined names in TypeScript; plain JavaScript needs them told.
 * @returns {Record<string, 'readonly'>}
 */
function nodeGlobals() {
  const names = ['process', 'console', 'Buffer', 'URL', 'setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'fetch', 'AbortSignal', 'module', 'NodeJS'];
  const browser = ['window', 'document', 'navigator', 'self', 'caches', 'location', 'Response', 'Request', 'localStorage', 'FormData'];
  return Object.fromEntries([...names, ...browser].map((name) => [name, 'readonly']));
}
