import { DomainError } from '../errors.ts';

const ABSOLUTE_ZERO_F = -459.67;

/**
 * A temperature in °C, to a hundredth of a degree.
 *
 * @param fahrenheit °F
 * @throws DomainError `climate/not-a-temperature` below absolute zero, or for what is no number
 *
 * Source: the definition, t/°C = (t/°F - 32) / 1.8 (NIST SP 811, 2008, B.8).
 */
export function celsiusOf(fahrenheit: number): number {
  if (!(fahrenheit >= ABSOLUTE_ZERO_F) || !Number.isFinite(fahrenheit)) {
    throw new DomainError('climate/not-a-temperature', 'that is no temperature in degrees Fahrenheit');
  }
  const celsius = Math.round(((fahrenheit - 32) * 500) / 9) / 100;
  // Rounding a small negative one leaves -0.
  return celsius === 0 ? 0 : celsius;
}
