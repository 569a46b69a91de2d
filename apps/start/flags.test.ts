import { expect, test } from 'vitest';
import { readTask } from './flags.mjs';

test('without a flag it serves', () => {
  expect(readTask([])).toBe('serve');
});

test('a flag names the task', () => {
  expect(readTask(['--reset-demo'])).toBe('reset-demo');
});

test.each([['--demoo'], ['demo'], ['--demo', '--verify'], ['--constructor'], ['--serve']])('refuses %s and lists what there is', (...args) => {
  expect(() => readTask(args)).toThrow(/means nothing here[^]*--migrate/);
});
