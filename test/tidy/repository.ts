import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '');

/** Not written by hand, or not ours. */
const NOT_OURS = /(^|\/)(node_modules|dist|\.next|\.turbo|generated|\.data|\.git|test-results|playwright-report)(\/|$)/;

export interface SourceFile {
  /** From the root, with / between folders. */
  readonly path: string;
  readonly text: string;
  readonly lines: number;
}

/** Every file that belongs to the repository: tracked or about to be, and there. */
export function repositoryFiles(): string[] {
  const files = existsSync(join(ROOT, '.git')) ? askGit() : walk(ROOT);
  return files.filter((path) => !NOT_OURS.test(path) && existsSync(join(ROOT, path))).sort();
}

/** What people wrote to be run: no data, no lock file, no words of a licence. */
export function sourceFiles(): SourceFile[] {
  return repositoryFiles()
    .filter((path) => /\.(ts|tsx|mts|mjs|cjs|js|sql|prisma|css|sh)$/.test(path))
    .map((path) => {
      const text = readFileSync(join(ROOT, path), 'utf8');
      return { path, text, lines: text.split('\n').length - (text.endsWith('\n') ? 1 : 0) };
    });
}

function askGit(): string[] {
  const args = ['ls-files', '--cached', '--others', '--exclude-standard', '-z'];
  return execFileSync('git', ['-c', `safe.directory=${ROOT}`, ...args], { cwd: ROOT, encoding: 'utf8' }).split('\0').filter(Boolean);
}

/** For a copy without its history. */
function walk(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (NOT_OURS.test(relative(ROOT, path))) return [];
    return entry.isDirectory() ? walk(path) : [relative(ROOT, path)];
  });
}
