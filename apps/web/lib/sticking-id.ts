import { createHash } from 'node:crypto';

/**
 * The id of a sticking: one bundle's cuttings, put into medium on one day under one
 * recipe. Made of just these (a UUID of version 8, RFC 9562, 5.8), so that whatever
 * tray they go into, and whoever writes it, they are the same cohort.
 */
export function stickingIdOf(bundleId: string, day: string, recipeVersionId: string | undefined): string {
  const hash = createHash('sha256').update(JSON.stringify(['sticking', bundleId, day, recipeVersionId ?? null])).digest();
  hash.writeUInt8(0x80 | (hash.readUInt8(6) & 0x0f), 6);
  hash.writeUInt8(0x80 | (hash.readUInt8(8) & 0x3f), 8);
  const hex = hash.toString('hex');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20, 32)].join('-');
}
