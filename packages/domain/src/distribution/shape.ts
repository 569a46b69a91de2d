import { DomainError } from '../errors.ts';

/** Beyond these a distribution is a point, and the series that are used here run out of digits. */
const [LEAST, MOST] = [1e-100, 1e15];

/** @throws DomainError `numbers/not-a-shape` unless a shape is above 0, and of a size that any count can have */
export function refuseUnlessShape(shape: number): void {
  if (!(shape >= LEAST && shape <= MOST)) throw new DomainError('numbers/not-a-shape', 'a shape is a number above 0, of a size that a count can have', { shape });
}
