import { z } from 'zod';
import { Id, Words } from './shapes.ts';

/**
 * What a key can be let into: a noun of the API, and whether it may read or write there.
 * People, invitations, rights, permissions and exact places are not on the list: no key opens them.
 */
export const KEY_SCOPES = [
  'batches:read', 'labels:read', 'donor-trees:read', 'donor-trees:write', 'stands:read', 'sites:read', 'places:read', 'taxa:read',
  'recipes:read', 'trips:read', 'trips:write', 'workdays:read', 'workdays:write', 'readings:read', 'entries:write', 'changes:read',
] as const;
export const KeyScope = z.enum(KEY_SCOPES);
export type KeyScope = z.infer<typeof KeyScope>;

/** What a partner's key can be let into, and there it is shown only what concerns that partner. */
export const PARTNER_SCOPES: readonly KeyScope[] = [
  'batches:read', 'labels:read', 'donor-trees:read', 'stands:read', 'sites:read', 'taxa:read', 'readings:read', 'entries:write', 'changes:read',
];

/** A key for a program of the programme itself, or of one partner. */
export const MakeKey = z
  .strictObject({
    id: Id,
    /** What it is for, such as `office spreadsheet`. */
    name: Words,
    /** Left out: a key of the programme itself. */
    partnerId: Id.optional(),
    scopes: z.array(KeyScope).min(1, { error: 'must let it into something' }).max(KEY_SCOPES.length),
    /** Days until it ends. */
    days: z.int().min(1).max(730).default(365),
  })
  .refine(({ partnerId, scopes }) => partnerId === undefined || scopes.every((scope) => PARTNER_SCOPES.includes(scope)), {
    path: ['scopes'],
    error: 'must be open to partners',
  });
export type MakeKey = z.infer<typeof MakeKey>;

/** The key itself. It is answered this once; only a hash of it is kept. */
export const MadeKey = z.object({ id: Id, key: z.string(), expiresAt: z.iso.datetime() });
export type MadeKey = z.infer<typeof MadeKey>;

export const Key = z.object({
  id: Id,
  name: z.string(),
  partner: z.object({ id: Id, name: z.string() }).nullable(),
  /** Its visible start, to know it again. */
  start: z.string(),
  scopes: z.array(KeyScope),
  madeBy: z.string(),
  madeAt: z.iso.datetime(),
  expiresAt: z.iso.datetime(),
  /** The hour in which it was last used. */
  lastUsedAt: z.iso.datetime().nullable(),
  /** `ended`: the partner's time is over. */
  state: z.enum(['open', 'revoked', 'expired', 'ended']),
});
export type Key = z.infer<typeof Key>;
