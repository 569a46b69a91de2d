import { z } from 'zod';
import { Day, Id, orNothing, Plants, Prose, SomePlants, Words } from './shapes.ts';

const Content = z.strictObject({
  grantedBy: Words,
  land: Words,
  standId: orNothing(Id),
  /** The species that it is for; none: any. */
  taxonIds: z.array(Id).max(50).default([]),
  /** Cuttings allowed in all; null: no limit told. */
  quota: orNothing(SomePlants),
  validFrom: Day,
  validUntil: orNothing(Day),
  terms: orNothing(Prose),
  /** Where the paper is. */
  document: orNothing(Words),
  plantsOwedBack: Plants.default(0),
});

const endsAfterItBegins = (told: { validFrom: string; validUntil: string | null }): boolean =>
  told.validUntil === null || told.validUntil >= told.validFrom;
const ORDER = { path: ['validUntil'], error: 'must not be before it begins' };

/** Who allowed collecting what, how much, where, until when, on what terms. Body of PUT. */
export const PermissionContent = Content.refine(endsAfterItBegins, ORDER);
export type PermissionContent = z.infer<typeof PermissionContent>;

export const NewPermission = Content.extend({ id: Id }).refine(endsAfterItBegins, ORDER);
export type NewPermission = z.infer<typeof NewPermission>;

/** Answered only to the grant *see exact places*. */
export const Permission = z.object({
  ...Content.shape,
  id: Id,
  /** Cuttings taken under it so far, on all trips. */
  used: z.int(),
  /** Plants given back so far, by requests that name it. */
  givenBack: z.int(),
});
export type Permission = z.infer<typeof Permission>;

/** A permission that ends within 60 days (or ended within the last 60), or of whose quota nine tenths are used. */
export const PermissionEnding = z.object({
  id: z.uuid(),
  grantedBy: z.string(),
  land: z.string(),
  /** Only where the day is near; null where the quota alone is why it is told. */
  validUntil: Day.nullable(),
  isPast: z.boolean(),
  quota: z.int().nullable(),
  used: z.int(),
  isNearlyUsed: z.boolean(),
});
export type PermissionEnding = z.infer<typeof PermissionEnding>;
