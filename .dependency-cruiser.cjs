// Who may import whom. `npm run imports` checks it; a broken rule is named with its reason.
const TEST = '\\.test\\.tsx?$';
const API_ROOMS = 'http/|database/|config/';

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: 'no-cycles',
      comment: 'Two files that need each other are one thought in two places. Types alone may point back.',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'domain-only-computes',
      comment: 'packages/domain imports nothing: no framework, no file, no clock, not even zod.',
      severity: 'error',
      from: { path: '^packages/domain/src', pathNot: TEST },
      to: { pathNot: '^packages/domain/src' },
    },
    {
      name: 'contract-is-only-shapes',
      comment: 'packages/contract imports zod and itself, because partners import it.',
      severity: 'error',
      from: { path: '^packages/contract/src', pathNot: TEST },
      to: { pathNot: ['^packages/contract/src', '(^|/)node_modules/zod/'] },
    },
    {
      name: 'packages-at-their-public-door',
      comment: 'A package is entered by its index.ts; what is behind it may change.',
      severity: 'error',
      from: { pathNot: '^packages/([^/]+)/' },
      to: { path: '^packages/[^/]+/src/', pathNot: '^packages/[^/]+/src/index\\.ts$' },
    },
    {
      name: 'apps-do-not-know-each-other',
      comment: 'The web app and the API meet over HTTP, in the shapes of packages/contract. Only apps/start knows both.',
      severity: 'error',
      from: { path: '^apps/(api|web)/' },
      to: { path: '^apps/', pathNot: '^apps/$1/' },
    },
    {
      name: 'api-features-meet-at-their-modules',
      comment: 'A feature may import another feature’s .module.ts or .queries.ts, and nothing else of it.',
      severity: 'error',
      from: { path: `^apps/api/src/(?!${API_ROOMS})([^/]+)/`, pathNot: TEST },
      to: {
        path: `^apps/api/src/(?!${API_ROOMS})[^/]+/`,
        pathNot: ['^apps/api/src/$1/', '\\.(module|queries)\\.ts$'],
      },
    },
    {
      name: 'controllers-do-not-touch-the-database',
      comment: 'A controller says path, contract and status. It asks its service or its queries.',
      severity: 'error',
      from: { path: '\\.controller\\.ts$' },
      to: { path: ['^apps/api/src/database/', '(^|/)node_modules/(pg|@prisma)/'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'prisma-stays-on-the-shelf',
      comment: 'Only apps/api/src/database knows Prisma; the features are given what they may use.',
      severity: 'error',
      from: { path: '^(apps|packages)/', pathNot: ['^apps/api/src/database/', TEST] },
      to: { path: ['(^|/)node_modules/@prisma/', '^apps/api/src/database/generated/'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'web-flows-one-way',
      comment: 'app -> features -> ui, lib. Never back, and never from one feature into another.',
      severity: 'error',
      from: { path: '^apps/web/(features/([^/]+)|ui|lib)/' },
      to: { path: ['^apps/web/app/', '^apps/web/features/'], pathNot: '^apps/web/features/$2/' },
    },
    {
      name: 'tests-stay-out-of-the-product',
      comment: 'What people run never needs what only tests need.',
      severity: 'error',
      from: { path: '^(apps|packages|prisma)/', pathNot: TEST },
      to: { path: ['^test/', TEST] },
    },
    {
      name: 'nothing-unresolved',
      comment: 'An import that leads nowhere.',
      severity: 'error',
      // Made by the builds, which the check of imports does not need.
      from: { pathNot: ['^apps/web/next-env'] },
      to: { couldNotResolve: true, pathNot: ['^@sprigline/api$', '^\\./generated/', '\\.css$'] },
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules', '(^|/)generated/'] },
    exclude: { path: '(^|/)(dist|\\.next|\\.turbo)/' },
    tsPreCompilationDeps: true,
    detectProcessBuiltinModuleCalls: false,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['source', 'import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.cjs', '.js', '.json'],
    },
    tsConfig: { fileName: 'tsconfig.base.json' },
  },
};
