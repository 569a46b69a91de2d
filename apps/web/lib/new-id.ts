/**
 * A UUID of version 7 (RFC 9562, 5.7): 48 bits of milliseconds, then chance.
 * A page makes one for each thing its form will create, so that pressing twice
 * or sending again after a lost answer writes once.
 */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const view = new DataView(bytes.buffer);
  const now = Date.now();
  view.setUint32(0, Math.floor(now / 2 ** 16));
  view.setUint16(4, now % 2 ** 16);
  view.setUint8(6, 0x70 | (view.getUint8(6) & 0x0f));
  view.setUint8(8, 0x80 | (view.getUint8(8) & 0x3f));
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}
