import { createHash } from 'node:crypto';

/**
 * UUID of version 8 (RFC 9562, section 5.8) made from what a thing is.
 *
 * The same content in the same programme always gives the same id, on whatever
 * machine: so a sheet imported twice names its entries by the same ids.
 */
export function contentId(programmeId: string, ...content: readonly (string | number)[]): string {
  const hash = createHash('sha256').update(JSON.stringify([programmeId, ...content])).digest();
  hash[6] = ((hash[6] ?? 0) & 0x0f) | 0x80;
  hash[8] = ((hash[8] ?? 0) & 0x3f) | 0x80;
  const hex = hash.toString('hex', 0, 16);
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}
