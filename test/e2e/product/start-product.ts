import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FullConfig } from '@playwright/test';
import { demoOf, ended, launch } from './launch.ts';

/**
 * Starts the products as their users would, each with data of its own: one with the demo for each lane
 * of journeys, and an empty one. Tells the journeys where they are and how to sign in.
 *
 * @returns how to stop them
 */
export default async function startProduct({ workers }: FullConfig): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'sprigline-e2e-'));
  // As root, PostgreSQL runs as somebody else, who has to get in.
  chmodSync(folder, 0o755);
  const demo = (lane: number) => launch({ settings: { DATA_DIR: join(folder, `demo-${lane}`) }, until: 'owner@' });
  // The first one builds what has changed; only then the others come.
  const first = await demo(0);
  const [empty, ...others] = await Promise.all([
    launch({ flags: ['--', '--empty'], settings: { DATA_DIR: join(folder, 'empty') }, until: '/set-up/' }),
    ...Array.from({ length: workers - 1 }, (_, lane) => demo(lane + 1)),
  ]);

  process.env['E2E_DEMOS'] = JSON.stringify([first, ...others].map(({ said }) => demoOf(said)));
  process.env['E2E_SETUP_LINK'] = /http\S+\/set-up\/\S+/.exec(empty.said)?.[0] ?? '';

  return async () => {
    await Promise.all([first, ...others, empty].map((product) => ended(product)));
    rmSync(folder, { recursive: true, force: true });
  };
}
