import { mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { startPostgres } from '@sprigline/start/postgres';
import type { TestProject } from 'vitest/node';
import { makeTemplate } from '../support/database/template.ts';
import { programsFolder, startTestCluster, type TestCluster } from '../support/database/test-cluster.ts';

/**
 * Once a run: one server. With `LOAD_FOLDER` its data stay in that folder, so that a large programme is
 * made once; without, all is gone afterwards.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const cluster = process.env['LOAD_FOLDER'] === undefined ? await startTestCluster() : await keptCluster(resolve(process.env['LOAD_FOLDER']));
  try {
    project.provide('postgres', await makeTemplate(cluster));
  } catch (error) {
    await cluster.remove();
    throw error;
  }
  return () => cluster.remove();
}

async function keptCluster(home: string): Promise<TestCluster> {
  mkdirSync(home, { recursive: true, mode: 0o711 });
  const postgres = await startPostgres({ home, durable: false, mayCreateUser: false, ...programsFolder() });
  return { ...postgres, remove: () => postgres.stop() };
}
