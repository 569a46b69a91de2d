import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { differs, type Replay } from './agreement.ts';
import { FAULTS, type Fault } from './planted-faults.ts';

const DOMAIN = fileURLToPath(new URL('../../packages/domain/src', import.meta.url));
const HISTORIES = 2000;

describe('the naive replay sees through', () => {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'planted-faults-'));
  });
  afterAll(() => rm(folder, { recursive: true }));

  test('no fault in a faithful copy', async () => {
    expect(differs(await copyOfReplay(join(folder, 'faithful')), 200)).toBe(false);
  });

  test.each(FAULTS)('$slip', async (fault) => {
    const replay = await copyOfReplay(join(folder, String(FAULTS.indexOf(fault))), fault);
    expect(differs(replay, HISTORIES)).toBe(true);
  });
});

/** A copy of the replay in that folder, with the fault in it. */
async function copyOfReplay(folder: string, fault?: Fault): Promise<Replay> {
  await cp(DOMAIN, folder, { recursive: true, filter: (file) => !file.endsWith('.test.ts') });
  if (fault !== undefined) await plant(join(folder, 'ledger', fault.file), fault);
  const module: { replay: Replay } = await import(/* @vite-ignore */ pathToFileURL(join(folder, 'ledger/replay.ts')).href);
  return module.replay;
}

async function plant(file: string, { right, wrong }: Fault): Promise<void> {
  const source = await readFile(file, 'utf8');
  const places = source.split(right).length - 1;
  if (places !== 1) throw new Error(`"${right}" stands ${places} times in ${file}: plant this fault anew`);
  await writeFile(file, source.replace(right, wrong));
}
