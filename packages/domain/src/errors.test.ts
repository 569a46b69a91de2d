import { describe, expect, test } from 'vitest';
import { DomainError } from './errors.ts';

describe('DomainError', () => {
  test('carries a code to look words up by, a sentence, and the numbers behind it', () => {
    const error = new DomainError('survival/no-plants', 'a share needs at least one plant', { plants: 0 });

    expect(error).toBeInstanceOf(Error);
    expect(error.name).toBe('DomainError');
    expect(error.code).toBe('survival/no-plants');
    expect(error.message).toBe('a share needs at least one plant');
    expect(error.facts).toEqual({ plants: 0 });
  });

  test('has no facts unless some are given', () => {
    expect(new DomainError('survival/no-plants', 'none').facts).toEqual({});
  });
});
