import type { TestProject } from 'vitest/node';
import { makeTemplate, type ServerAddress } from './template.ts';
import { startTestCluster } from './test-cluster.ts';

declare module 'vitest' {
  interface ProvidedContext {
    postgres: ServerAddress;
  }
}

/** Once a run: one server, one migrated template. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const cluster = await startTestCluster();
  try {
    project.provide('postgres', await makeTemplate(cluster));
  } catch (error) {
    await cluster.remove();
    throw error;
  }
  return () => cluster.remove();
}
