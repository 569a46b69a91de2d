import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ROOT } from './repository.ts';

/** One sin a rule, and what must be allowed beside it. */
const TREE: Readonly<Record<string, string>> = {
  'packages/domain/src/index.ts': "export * from './thing.ts';",
  'packages/domain/src/thing.ts': "import fs from 'node:fs'; export const thing = fs;",
  'packages/contract/src/index.ts': "import '../../domain/src/index.ts';",
  'apps/api/src/batch/batch.service.ts': "import '../donor/donor.queries.ts'; import '../donor/donor.service.ts';",
  'apps/api/src/batch/batch.controller.ts': "import '../database/database.ts';",
  'apps/api/src/batch/batch.queries.ts': "import '../database/generated/client.ts';",
  'apps/api/src/batch/batch.module.ts': "import '../../../../packages/domain/src/thing.ts';",
  'apps/api/src/donor/donor.queries.ts': 'export const rows = 1;',
  'apps/api/src/donor/donor.service.ts': "import '../../../../test/support/build.ts';",
  'apps/api/src/database/database.ts': 'export const database = 1;',
  'apps/api/src/database/generated/client.ts': 'export const client = 1;',
  'apps/web/features/batch/batch-list.tsx': "import '../donor/donor-list.tsx'; import '../../lib/api.ts';",
  'apps/web/features/donor/donor-list.tsx': 'export const list = 1;',
  'apps/web/lib/api.ts': "import '../../api/src/donor/donor.queries.ts';",
  'apps/web/lib/one.ts': "import { two } from './two.ts'; export const one = () => two;",
  'apps/web/lib/two.ts': "import { one } from './one.ts'; import './nowhere.ts'; export const two = () => one;",
  'test/support/build.ts': 'export const build = 1;',
};

const EXPECTED = [
  'api-features-meet-at-their-modules: apps/api/src/batch/batch.service.ts -> apps/api/src/donor/donor.service.ts',
  'apps-do-not-know-each-other: apps/web/lib/api.ts -> apps/api/src/donor/donor.queries.ts',
  'contract-is-only-shapes: packages/contract/src/index.ts -> packages/domain/src/index.ts',
  'controllers-do-not-touch-the-database: apps/api/src/batch/batch.controller.ts -> apps/api/src/database/database.ts',
  'domain-only-computes: packages/domain/src/thing.ts -> fs',
  'no-cycles: apps/web/lib/one.ts -> apps/web/lib/two.ts',
  'nothing-unresolved: apps/web/lib/two.ts -> ./nowhere.ts',
  'packages-at-their-public-door: apps/api/src/batch/batch.module.ts -> packages/domain/src/thing.ts',
  'prisma-stays-on-the-shelf: apps/api/src/batch/batch.queries.ts -> apps/api/src/database/generated/client.ts',
  'tests-stay-out-of-the-product: apps/api/src/donor/donor.service.ts -> test/support/build.ts',
  'web-flows-one-way: apps/web/features/batch/batch-list.tsx -> apps/web/features/donor/donor-list.tsx',
];

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'sins-'));
  for (const [file, text] of Object.entries(TREE)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  for (const file of ['.dependency-cruiser.cjs', 'tsconfig.base.json']) cpSync(join(ROOT, file), join(folder, file));
});
afterAll(() => rmSync(folder, { recursive: true }));

test('every rule about imports names its sin, and nothing that is allowed', () => {
  const program = join(ROOT, 'node_modules', '.bin', 'depcruise');
  const args = ['--config', '.dependency-cruiser.cjs', '--output-type', 'json', 'apps', 'packages', 'test'];
  const { stdout } = spawnSync(program, args, { cwd: folder, encoding: 'utf8', maxBuffer: 1e8 });
  const { summary } = JSON.parse(stdout) as { summary: { violations: Array<{ rule: { name: string }; from: string; to: string }> } };

  expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`).sort()).toEqual(EXPECTED);
});
