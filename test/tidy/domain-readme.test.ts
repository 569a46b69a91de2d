import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runInThisContext } from 'node:vm';
import * as domain from '@sprigline/domain';
import { expect, test } from 'vitest';
import { ROOT } from './repository.ts';

const readme = readFileSync(join(ROOT, 'packages/domain/README.md'), 'utf8');
const index = readFileSync(join(ROOT, 'packages/domain/src/index.ts'), 'utf8');

/** A group's examples: its heading and what stands in its block of code. */
const examples = [...readme.matchAll(/^## (.+)\n[^#]*?```ts\n([\s\S]*?)```/gm)].map(([, heading = '', code = '']) => ({ heading, code }));

test.each(examples)('the examples of "$heading" come out as they are printed', ({ code }) => {
  const printed = [...code.matchAll(/^(.+); \/\/ (.+)$/gm)];
  expect(printed.length).toBeGreaterThan(0);
  const asked = code.replaceAll(/^(.+); \/\/ .+$/gm, 'answers.push($1);');
  const answers = ask(`const answers = []; ${asked}; return answers;`) as unknown[];
  for (const [at, [line, , wanted = '']] of printed.entries()) expectPrinted(answers[at], ask(`return ${wanted};`), line);
});

test('every group of the public list has its examples, and every function named is on it', () => {
  const words = (heading: string) => (heading.toLowerCase().match(/[a-z]+/g) ?? [])[0];
  const groups = [...index.matchAll(/^\/\/ (.+)$/gm)].map(([, heading = '']) => heading).filter((heading) => heading !== 'Refusals');
  const told = [...examples.map(({ heading }) => heading), 'Work lists'];
  expect(groups.filter((group) => !told.some((heading) => words(heading) === words(group)))).toEqual([]);

  const named = [...readme.matchAll(/^\|.*\|$/gm)].flatMap(([row]) => [...row.matchAll(/`(\w+)`/g)].map(([, name = '']) => name));
  expect(named.length).toBeGreaterThan(90);
  expect(named.filter((name) => !(name in domain))).toEqual([]);
});

/** Runs plain script that knows the public functions by their names. */
const ask = (script: string): unknown => (runInThisContext(`(({ ${Object.keys(domain).join(', ')} }) => { ${script} })`) as (from: typeof domain) => unknown)(domain);

/** Only what is printed is compared, a number to half of its last digit. */
function expectPrinted(answer: unknown, wanted: unknown, line: string): void {
  if (typeof wanted === 'number') {
    const digits = `${wanted}`.split('.')[1]?.length ?? 0;
    expect(Math.abs((answer as number) - wanted), line).toBeLessThanOrEqual(digits === 0 ? 1e-9 : 0.5000001 * 10 ** -digits);
  } else if (typeof wanted === 'object' && wanted !== null) {
    if (Array.isArray(wanted)) expect(answer, line).toHaveLength(wanted.length);
    for (const [key, value] of Object.entries(wanted)) expectPrinted((answer as Record<string, unknown>)[key], value, line);
  } else {
    expect(answer, line).toBe(wanted);
  }
}
