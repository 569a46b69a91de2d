import { mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findLacking } from './install.mjs';
import { keptSecret } from './kept-secret.mjs';
import { choosePort } from './web-port.mjs';

const folder = mkdtempSync(join(tmpdir(), 'steps-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('installing', () => {
  const write = (file: string, packages: object): void => writeFileSync(join(folder, file), JSON.stringify({ packages }));
  const wanted = {
    '': {},
    'apps/web': { version: '0.1.0' },
    'node_modules/web': { link: true },
    'node_modules/one': { version: '1.0.0' },
    'node_modules/tool': { version: '1.0.0', dev: true },
    'node_modules/for-another-machine': { version: '1.0.0', optional: true },
  };

  test('nothing there: all of it', () => {
    write('package-lock.json', wanted);

    expect(findLacking(folder)).toBe('');
  });

  test.each([
    ['complete', { 'node_modules/one': { version: '1.0.0' }, 'node_modules/tool': { version: '1.0.0', dev: true } }, undefined],
    ['without tools, as in an image', { 'node_modules/one': { version: '1.0.0' } }, undefined],
    ['an older version', { 'node_modules/one': { version: '0.9.0' } }, 'node_modules/one'],
    ['a tool missing among tools', { 'node_modules/one': { version: '1.0.0' }, 'node_modules/saw': { version: '1.0.0', dev: true } }, 'node_modules/tool'],
  ])('%s', (_, installed, lacking) => {
    mkdirSync(join(folder, 'node_modules'), { recursive: true });
    write('node_modules/.package-lock.json', installed);

    expect(findLacking(folder)).toBe(lacking);
  });
});

describe('the port', () => {
  const PORT = 4101;
  const other: Server = createServer();
  beforeAll(() => new Promise<void>((resolve) => void other.listen(PORT, '127.0.0.1', resolve)));
  afterAll(() => void other.close());

  test('one that was asked for and is taken is refused, with a way out', async () => {
    await expect(choosePort({ host: '127.0.0.1', port: PORT, wasAskedFor: true })).rejects.toThrow(`Port ${PORT} is taken by another program.`);
  });

  test('the usual one gives way to the next', async () => {
    expect(await choosePort({ host: '127.0.0.1', port: PORT, wasAskedFor: false })).toBeGreaterThan(PORT);
  });

  test('an address that is not of this machine is named', async () => {
    await expect(choosePort({ host: '192.0.2.1', port: PORT, wasAskedFor: true })).rejects.toThrow('Is HOST an address of this machine?');
  });
});

test('the secret is the same at every start, and nobody else may read it', () => {
  const first = keptSecret(join(folder, 'data'));

  expect(keptSecret(join(folder, 'data'))).toBe(first);
  expect(first.length).toBeGreaterThanOrEqual(32);
  expect(statSync(join(folder, 'data', 'secret')).mode & 0o077).toBe(0);
});
