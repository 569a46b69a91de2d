import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CORE_SCHEMA, load, mergeTag } from 'js-yaml';
import { afterAll, expect, test } from 'vitest';
import { ROOT } from './repository.ts';

interface Service {
  readonly image: string;
  readonly command?: readonly string[];
  readonly environment: Readonly<Record<string, string>>;
  readonly volumes?: readonly string[];
}

const text = readFileSync(join(ROOT, 'docker/compose.yml'), 'utf8');
const { services } = load(text, { schema: CORE_SCHEMA.withTags(mergeTag) }) as { services: Record<'postgres' | 'migrate' | 'sprigline', Service> };

const folder = mkdtempSync(join(tmpdir(), 'docker-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('the database keeps its data where version 18 of the image looks for them', () => {
  expect(services.postgres.image).toMatch(/^postgres:18\b/);
  expect(services.postgres.volumes).toEqual(['database:/var/lib/postgresql']);
});

test('the service never learns the passwords that may change tables or do everything', () => {
  const names = Object.keys(services.sprigline.environment);

  expect(names).toEqual(expect.arrayContaining(['DATABASE_URL', 'DATABASE_AUTH_URL', 'DATABASE_KEEPER_URL', 'SECRET']));
  expect(names.filter((name) => /OWNER|SUPERUSER/.test(name))).toEqual([]);
});

test('no password has a default', () => {
  const secrets = [...text.matchAll(/\$\{(\w*(?:PASSWORD|SECRET)\w*)(.)/g)];

  expect(secrets.length).toBeGreaterThan(5);
  expect(secrets.filter(([, , sign]) => sign !== ':')).toEqual([]);
  expect(text).not.toMatch(/\$\{\w*(PASSWORD|SECRET)\w*:?-/);
});

test('every step in the images is a script that is there, and so runs without Docker too', () => {
  const dockerfile = readFileSync(join(ROOT, 'docker/Dockerfile'), 'utf8');
  const commands = [...dockerfile.matchAll(/^(?:RUN|CMD|HEALTHCHECK .*CMD) (.*)$/gm)].map(([, command]) => command ?? '');
  const steps = [...commands, ...Object.values(services).map(({ command }) => command?.join(' ') ?? '')].filter(Boolean);

  expect(steps.length).toBeGreaterThan(4);
  for (const step of steps) {
    const script = /docker\/steps\/[\w-]+\.(sh|mjs)/.exec(step)?.[0];
    expect(script, step).toBeDefined();
    expect(existsSync(join(ROOT, String(script))), step).toBe(true);
  }
});

test('passwords are made once, differ, and are for nobody else to read', () => {
  mkdirSync(join(folder, 'docker'));
  for (const file of ['make-env.sh', 'compose.yml']) cpSync(join(ROOT, 'docker', file), join(folder, 'docker', file));
  const make = () => spawnSync('sh', ['docker/make-env.sh'], { cwd: folder, encoding: 'utf8' });

  expect(make().status).toBe(0);
  const first = readFileSync(join(folder, 'docker/.env'), 'utf8');
  expect(make().stdout).toContain('nothing was changed');
  expect(readFileSync(join(folder, 'docker/.env'), 'utf8')).toBe(first);

  const values = [...first.matchAll(/^\w+=([0-9a-f]{48})$/gm)].map(([, value]) => value);
  expect(new Set(values).size).toBe(6);
  expect(statSync(join(folder, 'docker/.env')).mode & 0o077).toBe(0);
});

const hasCompose = spawnSync('docker', ['compose', 'version']).status === 0;

test.runIf(hasCompose)('Docker itself reads the file', () => {
  const file = join(folder, 'docker/compose.yml');
  const { status, stderr } = spawnSync('docker', ['compose', '-f', file, 'config', '--quiet'], { encoding: 'utf8' });

  expect(stderr).toBe('');
  expect(status).toBe(0);
});
