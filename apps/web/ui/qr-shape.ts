import { encode } from 'uqr';

/** Light modules around the code that a reader needs (ISO/IEC 18004: four). */
const QUIET = 4;

/**
 * The dark modules of a QR code as one path, for screen and paper alike.
 *
 * @param says what a phone reads, at most some 2,000 characters
 * @returns side in modules, quiet zone included, and the path in those units
 * @throws Error when it does not fit into the largest code
 */
export function qrShape(says: string): { modules: number; path: string } {
  // Level M: a wet thumb or a fold over a tenth of it does no harm.
  const { size, data } = encode(says, { ecc: 'M', border: QUIET });
  const path = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return { modules: size, path };
}
