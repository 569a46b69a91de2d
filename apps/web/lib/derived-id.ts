import { createHash } from 'node:crypto';

/** An id made of words (a UUID of version 8, RFC 9562, 5.8): the same words make the same id, so that a form sent twice writes once. */
export function derivedId(...words: readonly string[]): string {
  const hash = createHash('sha256').update(JSON.stringify(words)).digest();
  hash.writeUInt8(0x80 | (hash.readUInt8(6) & 0x0f), 6);
  hash.writeUInt8(0x80 | (hash.readUInt8(8) & 0x3f), 8);
  const hex = hash.toString('hex');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20, 32)].join('-');
}
