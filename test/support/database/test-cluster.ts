import { chmodSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  clearLeftBehind,
  mayEnter,
  processStamp,
  serverUser,
  startPostgres,
  type Postgres,
} from '@sprigline/start/postgres';

const PREFIX = 'sprigline-test-';

export interface TestCluster extends Postgres {
  /** Stops the server and removes all its data. */
  remove(): Promise<void>;
}

/**
 * A PostgreSQL of its own for one test run: random port, random folder, no fsync.
 * Several runs at once do not meet. What a killed run left behind is removed first.
 */
export async function startTestCluster(): Promise<TestCluster> {
  await sweep(reachableTemporaryFolder());
  const home = temporaryHome();
  const postgres = await startPostgres({
    home,
    durable: false,
    mayCreateUser: false,
    ...programsFolder(),
  });
  return {
    ...postgres,
    async remove() {
      await postgres.stop();
      rmSync(home, { recursive: true, force: true });
    },
  };
}

/** A folder in which a PostgreSQL may live for the length of a run. */
export function temporaryHome(): string {
  const home = mkdtempSync(join(reachableTemporaryFolder(), `${PREFIX}${process.pid}-`));
  chmodSync(home, 0o711);
  return home;
}

/** Sixty megabytes that every run may share. Without a place for them, the run makes its own copy. */
export function programsFolder(): { programsFolder?: string } {
  const isRoot = process.getuid?.() === 0;
  const folder = join(isRoot ? '/var/cache' : join(homedir(), '.cache'), 'sprigline', 'postgres');
  try {
    mkdirSync(folder, { recursive: true, mode: 0o755 });
    const user = serverUser(folder, { mayCreate: false });
    return user === undefined || mayEnter(folder, user) ? { programsFolder: folder } : {};
  } catch {
    return {};
  }
}

/** Root's temporary folder may be closed to the user that PostgreSQL runs as. */
function reachableTemporaryFolder(): string {
  const user = serverUser('/nonexistent', { mayCreate: false });
  const folder = [tmpdir(), '/tmp', '/var/tmp'].find((place) => user === undefined || mayEnter(place, user));
  if (folder === undefined) throw new Error('No temporary folder can be entered by the user that PostgreSQL runs as.');
  return folder;
}

async function sweep(base: string): Promise<void> {
  const left = readdirSync(base).filter((name) => {
    if (!name.startsWith(PREFIX) || processStamp(Number.parseInt(name.slice(PREFIX.length), 10)) !== undefined) return false;
    return statSync(join(base, name), { throwIfNoEntry: false })?.uid === process.getuid?.();
  });
  for (const name of left) {
    await clearLeftBehind(join(base, name, 'cluster'));
    rmSync(join(base, name), { recursive: true, force: true });
  }
}
