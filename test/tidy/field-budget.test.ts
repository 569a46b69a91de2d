import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { fieldAssets } from '../../apps/web/worker/field-assets.mjs';
import { ROOT } from './repository.ts';

/** What the field page may load beside what the framework's barest page does, compressed. A phone with a weak signal fetches it once; every start reads it. */
const MOST_KB = 40;

const build = join(ROOT, 'apps/web/.next');

test.skipIf(!existsSync(join(build, 'BUILD_ID')))(`the page that a phone keeps has at most ${MOST_KB} kB of script of its own`, () => {
  const { own, bare } = fieldAssets(build);
  const sizeOf = (path: string): number => gzipSync(readFileSync(join(build, path))).length / 1000;
  const sum = (paths: readonly string[]): number => paths.reduce((kB, path) => kB + sizeOf(path), 0);
  expect(own.length).toBeGreaterThan(1);
  expect(sum(own) - sum(bare), own.map((path) => `${path}: ${sizeOf(path).toFixed(1)} kB`).join('\n')).toBeLessThanOrEqual(MOST_KB);
});
