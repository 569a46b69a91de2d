import { Aes128Gcm, CipherSuite, DhkemP256HkdfSha256, HkdfSha256 } from '@hpke/core';
import { expect, test } from 'vitest';
import { sealPlace } from '../../../../test/support/sealed-place.ts';
import { isOurs, newPair, opened } from './sealing.ts';

const SECRET = 'only for tests, and thirty-two signs long';
const [PROGRAMME, TREE, KEY] = ['019abc00-0000-7000-8000-000000000001', '019abc00-0000-7000-8000-000000000002', '3f8f0e4a-0000-4000-8000-000000000003'];
const of = { programmeId: PROGRAMME, keyId: KEY };
const PLACE = { latitude: 3.417001, longitude: -28.583001, uncertaintyM: 4, elevationM: null, directions: 'three paces uphill of the leaning post' };

const pair = await newPair(SECRET, of);
const key = { id: KEY, publicKey: pair.publicKey.toString('base64url') };
const { sealed } = await sealPlace(PLACE, key, { programmeId: PROGRAMME, donorTreeId: TREE });
const refusal = { code: 'seal/cannot-be-opened' };
/** With one byte turned over, or the last ones cut off. */
const turned = (text: string, at: number): string => {
  const bytes = Buffer.from(text, 'base64url');
  bytes[at]! ^= 1;
  return bytes.toString('base64url');
};
const cut = (text: string, bytes: number): string => Buffer.from(text, 'base64url').subarray(0, bytes).toString('base64url');

// RFC 9180, A.3.1: DHKEM(P-256, HKDF-SHA256), HKDF-SHA256, AES-128-GCM, base mode, sequence number 0. The RFC
// prints none with this curve and AES-256-GCM; all but the length of the last key is the same.
test('the library opens what the RFC prints', async () => {
  const hex = (text: string): ArrayBuffer => new Uint8Array(Buffer.from(text, 'hex')).buffer;
  const suite = new CipherSuite({ kem: new DhkemP256HkdfSha256(), kdf: new HkdfSha256(), aead: new Aes128Gcm() });
  const recipientKey = await suite.kem.deserializePrivateKey(hex('f3ce7fdae57e1a310d87f1ebbde6f328be0a99cdbcadf4d6589cf29de4b8ffd2'));
  const plain = await suite.open(
    {
      recipientKey,
      enc: hex('04a92719c6195d5085104f469a8b9814d5838ff72b60501e2c4466e5e67b325ac98536d7b61a1af4b78e5b7f951c0900be863c403ce65c9bfcb9382657222d18c4'),
      info: hex('4f6465206f6e2061204772656369616e2055726e'),
    },
    hex('5ad590bb8baa577f8619db35a36311226a896e7342a6d836d8b7bcd2f20b6c7f9076ac232e3ab2523f39513434'),
    hex('436f756e742d30'),
  );
  expect(Buffer.from(plain).toString()).toBe('Beauty is truth, truth beauty');
});

test('what a phone seals is opened for its tree, and says nothing on the way', async () => {
  expect(JSON.parse(await opened(SECRET, of, pair.lockedKey, TREE, sealed))).toEqual(PLACE);
  expect(Buffer.from(sealed.ciphertext, 'base64url').toString('latin1')).not.toMatch(/417|leaning|latitude/);
  const { sealed: without } = await sealPlace({ ...PLACE, directions: null }, key, { programmeId: PROGRAMME, donorTreeId: TREE });
  expect(without.ciphertext.length).toBe(sealed.ciphertext.length);
  expect((await sealPlace(PLACE, key, { programmeId: PROGRAMME, donorTreeId: TREE })).sealed.ciphertext).not.toBe(sealed.ciphertext);
});

test.each<[string, { tree?: string; ciphertext?: string; enc?: string }]>([
  ['moved to another tree', { tree: PROGRAMME }],
  ['a byte of its text turned over', { ciphertext: turned(sealed.ciphertext, 7) }],
  ['its text cut off', { ciphertext: cut(sealed.ciphertext, 100) }],
  ['hardly any text', { ciphertext: cut(sealed.ciphertext, 3) }],
  ['its point cut off', { enc: cut(sealed.enc, 40) }],
  ['a point that is not on the curve', { enc: turned(sealed.enc, 20) }],
])('%s: refused', async (_, { tree = TREE, ...changed }) => {
  await expect(opened(SECRET, of, pair.lockedKey, tree, { ...sealed, ...changed })).rejects.toMatchObject(refusal);
});

test('another key, another programme or another secret opens nothing', async () => {
  const other = await newPair(SECRET, of);
  await expect(opened(SECRET, of, other.lockedKey, TREE, sealed)).rejects.toMatchObject(refusal);
  await expect(opened(SECRET, { ...of, programmeId: TREE }, pair.lockedKey, TREE, sealed)).rejects.toMatchObject(refusal);
  await expect(opened(`${SECRET}!`, of, pair.lockedKey, TREE, sealed)).rejects.toMatchObject(refusal);
  expect([isOurs(SECRET, of, pair.lockedKey), isOurs(`${SECRET}!`, of, pair.lockedKey), isOurs(SECRET, { ...of, keyId: TREE }, pair.lockedKey)]).toEqual([true, false, false]);
});

test('the private half lies locked beside the public one: nonce, 32 bytes and tag', () => {
  expect([pair.publicKey.length, pair.lockedKey.length]).toEqual([65, 60]);
});
