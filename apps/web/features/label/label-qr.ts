import { encode } from 'uqr';

export interface LabelQr {
  /** Dark modules, row by row, without the light ones around. */
  readonly rows: readonly (readonly boolean[])[];
  /** Side in modules, without the light ones around. */
  readonly modules: number;
  /** What a phone reads. */
  readonly says: string;
}

/** Light modules on each side that a reader needs (ISO/IEC 18004: four). */
export const QUIET = 4;

/** A larger one has modules too small for a tray label. */
const LARGEST_VERSION = 4;

/** The strongest first: what stands wet, in the sun and under soil loses more of itself. */
const LEVELS = { usual: ['Q', 'M', 'L'], waterproof: ['H', 'Q', 'M', 'L'] } as const;

/**
 * The address behind a code. In capitals where nothing is changed by it, since a QR code holds them in a third less
 * room: the name of a host doesn't distinguish them, and neither does a label.
 *
 * @param address of the install, without a trailing slash
 */
export function addressOfLabel(address: string, code: string): string {
  const plain = new URL(`${address}/l/${encodeURIComponent(code)}`);
  const isOurs = plain.pathname === `/l/${encodeURIComponent(code)}` && /^[0-9A-Z $*+\-./:]*$/.test(code) && !code.includes(' ');
  return isOurs ? `${plain.protocol}//${plain.host}/L/${code}`.toUpperCase() : plain.href;
}

/**
 * A QR code for a label, as resistant as fits into version 4.
 *
 * @returns nothing for an address and a label so long together that no phone would read it from so small a mark
 */
export function labelQr(address: string, code: string, isWaterproof: boolean): LabelQr | undefined {
  const says = addressOfLabel(address, code);
  for (const ecc of LEVELS[isWaterproof ? 'waterproof' : 'usual']) {
    try {
      const { data, size } = encode(says, { ecc, border: 0, maxVersion: LARGEST_VERSION, boostEcc: true });
      return { rows: data, modules: size, says };
    } catch {
      // Too much for that level: the next one has more room.
    }
  }
  return undefined;
}
