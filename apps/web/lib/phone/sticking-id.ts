/**
 * The id of a sticking as the desk makes it (lib/sticking-id.ts), by what browsers have for it: whoever sticks more of a bundle on
 * the same day under the same recipe, here or at the desk, sticks into the same cohort.
 *
 * Browsers have it only on pages that came by HTTPS or from this very machine: see `canMakeStickingIds`.
 */
export async function stickingIdHere(bundleId: string, day: string, recipeVersionId: string | undefined): Promise<string> {
  const words = new TextEncoder().encode(JSON.stringify(['sticking', bundleId, day, recipeVersionId ?? null]));
  const hash = new DataView(await crypto.subtle.digest('SHA-256', words));
  hash.setUint8(6, 0x80 | (hash.getUint8(6) & 0x0f));
  hash.setUint8(8, 0x80 | (hash.getUint8(8) & 0x3f));
  const hex = Array.from({ length: 16 }, (_, at) => hash.getUint8(at).toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

export const canMakeStickingIds = (): boolean => (crypto as Partial<Crypto>).subtle !== undefined;
