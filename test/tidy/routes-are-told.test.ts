import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT, sourceFiles } from './repository.ts';

/** A docstring, then decorators, then the method that they are about. */
const TOLD_METHOD = /\n {2}\/\*\*((?:(?!\*\/)[^])*)\*\/\n((?: {2}@[^\n]*\n)+) {2}(?:async )?(\w+)\(/g;

/** What each route does, in the words of the docstring above it: `Batch.list` → `The newest first …` */
function docstrings(): Record<string, string> {
  const told = sourceFiles().filter(({ path }) => /^apps\/api\/src\/.*\.controller\.ts$/.test(path)).flatMap(({ text }) => {
    const noun = /export class (\w+)Controller\b/.exec(text)?.[1] ?? '';
    return [...text.matchAll(TOLD_METHOD)].map(([, words = '', , act = '']) => [`${noun}.${act}`, plain(words)] as const);
  });
  return Object.fromEntries(told.sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** One line, without stars and without notes for those who write code. */
const plain = (words: string): string => words.replaceAll(/\n\s*\*? ?/g, ' ').replace(/ @\w[^]*$/, '').replaceAll(/\s+/g, ' ').trim();

const file = (told: Record<string, string>): string => `/** What each route does, as its docstring says it. Written by \`npm run openapi\`; change the docstring instead. */
export const TOLD: Readonly<Record<string, string>> = ${JSON.stringify(told, null, 2)};
`;

// `npm run openapi` renews the file; in CI a difference fails.
test('the description of the API says of each route what its docstring says', async () => {
  const told = docstrings();
  expect(Object.keys(told).length).toBeGreaterThan(50);
  await expect(file(told)).toMatchFileSnapshot(join(ROOT, 'apps/api/src/openapi/told.ts'));
});
