import type { ExactPlace, SealedPlace, SealKey } from '@sprigline/contract';

/** Filled up with spaces to a multiple of so many bytes: whether somebody told the way must not show in the length. */
const STEP = 512;

/** Where a place belongs: it opens for that tree of that programme alone. */
export interface SealFor {
  readonly programmeId: string;
  readonly donorTreeId: string;
}

/** Whether this browser can seal. Only where the page came by https, or from this very device. */
export const canSeal = (): boolean => globalThis.crypto?.subtle !== undefined;

/**
 * Seals a place to the programme's key, before anything of it is kept. What comes out only the
 * server opens, for that tree; this device cannot. RFC 9180, base mode, P-256, AES-256-GCM.
 *
 * @param key the public half, from the pack
 * @throws when the browser cannot seal, or the key is none; nothing was kept then
 */
export async function sealPlace(place: ExactPlace, key: SealKey, { programmeId, donorTreeId }: SealFor): Promise<SealedPlace> {
  const { Aes256Gcm, CipherSuite, DhkemP256HkdfSha256, HkdfSha256 } = await import('@hpke/core');
  const suite = new CipherSuite({ kem: new DhkemP256HkdfSha256(), kdf: new HkdfSha256(), aead: new Aes256Gcm() });
  const recipientPublicKey = await suite.kem.deserializePublicKey(bytesIn(key.publicKey));
  const { enc, ct } = await suite.seal({ recipientPublicKey, info: bytesOf(programmeId.toLowerCase()) }, filledUp(place), bytesOf(donorTreeId.toLowerCase()));
  return { sealed: { keyId: key.id, enc: textOf(enc), ciphertext: textOf(ct) } };
}

/** JSON may be followed by spaces. */
function filledUp(place: ExactPlace): ArrayBuffer {
  const bytes = new TextEncoder().encode(JSON.stringify(place));
  const whole = new Uint8Array(Math.ceil(bytes.length / STEP) * STEP).fill(0x20);
  whole.set(bytes);
  return whole.buffer;
}

const bytesOf = (text: string): ArrayBuffer => new Uint8Array(new TextEncoder().encode(text)).buffer;

function textOf(bytes: ArrayBuffer): string {
  let signs = '';
  for (const byte of new Uint8Array(bytes)) signs += String.fromCharCode(byte);
  return btoa(signs).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

const bytesIn = (text: string): ArrayBuffer => Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (sign) => sign.charCodeAt(0)).buffer;
