import { Aes256Gcm, CipherSuite, DhkemP256HkdfSha256, HkdfSha256 } from '@hpke/core';
import type { SealedPlace } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { createCipheriv, createDecipheriv, hkdfSync, randomBytes } from 'node:crypto';

/** RFC 9180, base mode; the same on phones. */
const suite = new CipherSuite({ kem: new DhkemP256HkdfSha256(), kdf: new HkdfSha256(), aead: new Aes256Gcm() });

const NONCE = 12;
const TAG = 16;

/** A pair as it is kept. */
export interface LockedPair {
  readonly publicKey: Buffer;
  /** The private half, locked: nonce, key and tag. */
  readonly lockedKey: Buffer;
}

/** Whose pair it is. A lock of one programme and key opens in no other row. */
export interface PairOf {
  readonly programmeId: string;
  readonly keyId: string;
}

/** A new pair, its private half locked with a key made of the install's secret. */
export async function newPair(secret: string, of: PairOf): Promise<LockedPair> {
  const { publicKey, privateKey } = await suite.kem.generateKeyPair();
  const [open, bare] = await Promise.all([suite.kem.serializePublicKey(publicKey), suite.kem.serializePrivateKey(privateKey)]);
  const nonce = randomBytes(NONCE);
  const cipher = createCipheriv('aes-256-gcm', lockOf(secret), nonce).setAAD(rowOf(of));
  const lockedKey = Buffer.concat([nonce, cipher.update(Buffer.from(bare)), cipher.final(), cipher.getAuthTag()]);
  return { publicKey: Buffer.from(open), lockedKey };
}

/** Whether this install can still unlock a private half: not after its secret was changed. */
export function isOurs(secret: string, of: PairOf, lockedKey: Buffer): boolean {
  try {
    unlocked(secret, of, lockedKey);
    return true;
  } catch {
    return false;
  }
}

/**
 * Opens what was sealed for one donor tree.
 *
 * @returns the text within
 * @throws DomainError `seal/cannot-be-opened`: another key, tree or programme, or damaged on the way
 */
export async function opened(secret: string, of: PairOf, lockedKey: Buffer, donorTreeId: string, { enc, ciphertext }: SealedPlace['sealed']): Promise<string> {
  try {
    const recipientKey = await suite.kem.deserializePrivateKey(bytesOf(unlocked(secret, of, lockedKey)));
    const info = textBytes(of.programmeId);
    const plain = await suite.open({ recipientKey, enc: fromText(enc), info }, fromText(ciphertext), textBytes(donorTreeId));
    return new TextDecoder('utf-8', { fatal: true }).decode(plain);
  } catch {
    // Why not says nothing to anybody who means well, and something to the others.
    throw cannotBeOpened();
  }
}

export const cannotBeOpened = (): DomainError =>
  new DomainError('seal/cannot-be-opened', 'it was sealed for another tree or programme, to another key, or was damaged on the way: keep it on the phone, pack again, and measure the place anew');

function unlocked(secret: string, of: PairOf, lockedKey: Buffer): Buffer {
  const decipher = createDecipheriv('aes-256-gcm', lockOf(secret), lockedKey.subarray(0, NONCE), { authTagLength: TAG });
  decipher.setAAD(rowOf(of)).setAuthTag(lockedKey.subarray(-TAG));
  return Buffer.concat([decipher.update(lockedKey.subarray(NONCE, -TAG)), decipher.final()]);
}

/** The secret signs cookies too: what locks is made of it, and is not it. */
const lockOf = (secret: string): Buffer => Buffer.from(hkdfSync('sha256', secret, '', 'sprigline: private halves of seals', 32));

const rowOf = ({ programmeId, keyId }: PairOf): Buffer => Buffer.from(`${programmeId}/${keyId}`.toLowerCase());

const textBytes = (text: string): ArrayBuffer => bytesOf(Buffer.from(text.toLowerCase()));
const fromText = (text: string): ArrayBuffer => bytesOf(Buffer.from(text, 'base64url'));

/** Bytes in a buffer of their own, which the library wants. */
const bytesOf = (bytes: Uint8Array): ArrayBuffer => new Uint8Array(bytes).buffer;
