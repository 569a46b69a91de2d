import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { fieldAssets } from '../../apps/web/worker/field-assets.mjs';
import { ROOT } from './repository.ts';

/** What the field page may load beside the framework itself, compressed. A phone with a weak signal fetches it once; every start reads it. */
const MOST_KB = 40;

const build = join(ROOT, 'apps/web/.next');

test.skipIf(!existsSync(join(build, 'BUILD_ID')))(`the page that a phone keeps has at most ${MOST_KB} kB of script of its own`, () => {
  const { own } = fieldAssets(build);
  const sizes = own.map((path) => ({ path, kB: gzipSync(readFileSync(join(build, path))).length / 1000 }));
  expect(sizes.length).toBeGreaterThan(1);
  const all = sizes.reduce((sum, { kB }) => sum + kB, 0);
  expect(all, sizes.map(({ path, kB }) => `${path}: ${kB.toFixed(1)} kB`).join('\n')).toBeLessThanOrEqual(MOST_KB);
});
