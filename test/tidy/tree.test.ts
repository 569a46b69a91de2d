import { expect, test } from 'vitest';
import { repositoryFiles, sourceFiles } from './repository.ts';

const files = repositoryFiles();
const sources = sourceFiles();

/** What a newcomer sees first, and why it is there is written in DEVELOPERS.md. */
const AT_THE_TOP = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'apps',
  'docker',
  'package-lock.json',
  'package.json',
  'packages',
  'prisma',
  'test',
  'tsconfig.base.json',
  'turbo.json',
];

test('nothing stray lies at the top', () => {
  const top = new Set(files.map((path) => path.split('/')[0] ?? '').filter((name) => !name.startsWith('.')));

  expect([...top].filter((name) => !AT_THE_TOP.includes(name))).toEqual([]);
});

test('no folder collects what has no name of its own', () => {
  expect(files.filter((path) => /(^|\/)(utils?|helpers?|common|shared|misc|types)\//.test(path))).toEqual([]);
});

test('files are named in small letters with hyphens, and by their role', () => {
  const odd = sources.filter(({ path }) => {
    const name = path.split('/').at(-1) ?? '';
    return !/^[._]?[a-z0-9-]+(\.[a-z0-9-]+)*$/.test(name.replace(/^\[.*\]\.?/, ''));
  });

  expect(odd.map(({ path }) => path)).toEqual([]);
});

test('a package is the only place with a list of exports', () => {
  const barrels = sources.filter(
    ({ path, text }) =>
      /\/index\.tsx?$/.test(path) &&
      !/^packages\/[^/]+\/src\/index\.ts$|^apps\/api\/src\/index\.ts$/.test(path) &&
      text.includes('export *'),
  );

  expect(barrels.map(({ path }) => path)).toEqual([]);
});

test('no test is left alone or left out, and nothing is marked to be mended later', () => {
  const marks = /\b(test|it|describe)\.(only|skip|todo|fixme|fails?)\b|\b(FIX|TO)(ME|DO)\b|\bXXX\b/;

  expect(sources.filter(({ text }) => marks.test(text)).map(({ path }) => path)).toEqual([]);
});

test('relative imports end in the name of the file', () => {
  const bare = sources
    .filter(({ path }) => /\.[mc]?tsx?$/.test(path))
    .filter(({ text }) => /^(import|export)[^;]*?\sfrom\s+'\.{1,2}\/[^']*(?<!\.(ts|tsx|mjs|cjs|js|json|css))'/m.test(text));

  expect(bare.map(({ path }) => path)).toEqual([]);
});
