import { z } from 'zod';
import { Cell } from './position.ts';

/** The public half of a programme's seal: what a phone seals places to. Whoever holds it can close, and not open. */
export const SealKey = z.object({
  id: z.uuid(),
  /** A point of the curve P-256, uncompressed (65 bytes), as base64url. */
  publicKey: z.base64url(),
});
export type SealKey = z.infer<typeof SealKey>;

/**
 * An `ExactPlace` as JSON, sealed by HPKE (RFC 9180, base mode: DHKEM(P-256, HKDF-SHA256), HKDF-SHA256,
 * AES-256-GCM). Its `info` is the programme's id and its `aad` the donor tree's, both as text: a sealed
 * place opens for one tree alone. Spaces may follow the JSON, so that its length tells nothing.
 */
export const SealedPlace = z.strictObject({
  sealed: z.strictObject({
    keyId: z.uuid(),
    enc: z.base64url().min(1).max(200),
    ciphertext: z.base64url().min(1).max(40_000),
  }),
});
export type SealedPlace = z.infer<typeof SealedPlace>;

/** What is answered to whoever sealed it: no more than everybody in the programme is shown. */
export const SealedPlaceTold = z.object({ donorTreeId: z.uuid(), /** Null: withheld. */ cell: Cell.nullable() });
export type SealedPlaceTold = z.infer<typeof SealedPlaceTold>;
