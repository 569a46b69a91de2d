// Writes the typed client from schema/*.prisma, without asking the network for anything.
//
// Prisma's command line wants to download its schema engine even where it is not
// used. Any executable that exists will do in its place for `generate`; with such
// a stand-in `prisma migrate` would end well having done nothing: never run that.
import { execFileSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const prisma = join(dirname(createRequire(import.meta.url).resolve('prisma/package.json')), 'build', 'index.js');

try {
  execFileSync(process.execPath, [prisma, 'generate', '--no-hints'], {
    cwd: here,
    stdio: 'pipe',
    env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, PRISMA_HIDE_UPDATE_MESSAGE: '1', CHECKPOINT_DISABLE: '1' },
  });
} catch (error) {
  process.stderr.write(`${error.stdout ?? ''}${error.stderr ?? error}\n`);
  process.exitCode = 1;
}
