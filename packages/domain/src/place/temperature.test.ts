import fc from 'fast-check';
import { expect, test } from 'vitest';
import { celsiusOf } from './temperature.ts';

test.each([[32, 0], [212, 100], [-40, -40], [50, 10], [65, 18.33], [31.99, -0.01], [31.998, 0]])('%d °F are %d °C', (fahrenheit, celsius) => {
  expect(celsiusOf(fahrenheit)).toBe(celsius);
});

test('there and back is within the rounding', () => {
  fc.assert(fc.property(fc.double({ min: -76, max: 176, noNaN: true }), (f) => Math.abs(celsiusOf(f) * 1.8 + 32 - f) <= 0.0091));
});

test.each([Number.NaN, -460, Number.POSITIVE_INFINITY])('%d is no temperature', (f) => {
  expect(() => celsiusOf(f)).toThrow(expect.objectContaining({ code: 'climate/not-a-temperature' }));
});
