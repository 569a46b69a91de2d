import { expect, test } from 'vitest';
import { whereItBroke } from './where-it-broke.ts';

class PrismaClientValidationError extends Error {
  override readonly name = 'PrismaClientValidationError';
  readonly code = 'P2009';
}

test('an error of the door for records tells its kind, its code and the lines of code, and nothing that it was given', () => {
  const told = whereItBroke(new PrismaClientValidationError('Invalid `permission.create()` invocation:\n{\n  land: "above 3.417001",\n   at: "the post"\n}'));
  expect(told).toMatch(/^PrismaClientValidationError P2009\n\s+at .*where-it-broke\.test/);
  expect(told).not.toContain('3.417001');
  expect(told).not.toContain('post');
});

test('any other error is told as it is, and what is none is not', () => {
  const error = new Error('out of paper');
  expect(whereItBroke(error)).toBe(error.stack);
  expect(whereItBroke('3.417001')).toBeUndefined();
});
