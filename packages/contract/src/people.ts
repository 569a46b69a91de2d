import { z } from 'zod';
import { Id, Words } from './shapes.ts';

export const Role = z.enum(['volunteer', 'coordinator', 'owner', 'partner']);
export type Role = z.infer<typeof Role>;

/** Roles of people of the programme itself. */
export const OwnRole = Role.exclude(['partner']);

/** Somebody who works. Volunteers are told id and name only, to say who saw what. */
export const Person = z.object({
  id: Id,
  name: z.string(),
  /** Without an account: only a name. */
  hasAccount: z.boolean().optional(),
  role: Role.nullable().optional(),
  partnerId: Id.nullable().optional(),
  /** The grant *see exact places*. Coordinators and owners have it anyway. */
  seesExact: z.boolean().optional(),
  joinedAt: z.iso.datetime().optional(),
});
export type Person = z.infer<typeof Person>;

/** A person known by name only. Children are never named, only counted. */
export const AddPerson = z.strictObject({ id: Id, name: Words });
export type AddPerson = z.infer<typeof AddPerson>;

/** At least one of them. Needs `If-Match`. */
export const ChangePerson = z
  .strictObject({ name: Words, role: OwnRole, seesExact: z.boolean() })
  .partial()
  .refine((change) => Object.keys(change).length > 0, { error: 'must change something' });
export type ChangePerson = z.infer<typeof ChangePerson>;

/** An invitation to join. Its link is shown to whoever makes it, and works once. */
export const MakeInvitation = z
  .strictObject({
    id: Id,
    forName: Words,
    role: Role,
    /** Whose person it is, for the role partner. */
    partnerId: Id.optional(),
    /** A person known by name who gets an account by this. */
    personId: Id.optional(),
    seesExact: z.boolean().default(false),
    days: z.int().min(1).max(60).default(14),
  })
  .refine((invitation) => (invitation.role === 'partner') === (invitation.partnerId !== undefined), {
    path: ['partnerId'],
    error: 'must be told for the role partner, and only for it',
  });
export type MakeInvitation = z.infer<typeof MakeInvitation>;

/** A link to copy and hand over. */
export const MadeLink = z.object({ id: Id, link: z.url(), expiresAt: z.iso.datetime() });
export type MadeLink = z.infer<typeof MadeLink>;

export const Invitation = z.object({
  id: Id,
  forName: z.string(),
  role: Role,
  partnerId: Id.nullable(),
  personId: Id.nullable(),
  seesExact: z.boolean(),
  madeBy: z.string(),
  madeAt: z.iso.datetime(),
  expiresAt: z.iso.datetime(),
  state: z.enum(['open', 'used', 'withdrawn', 'expired']),
});
export type Invitation = z.infer<typeof Invitation>;

/** What the holder of an invitation is told before they accept. */
export const InvitationSeen = z.object({ programme: z.string(), role: Role });
export type InvitationSeen = z.infer<typeof InvitationSeen>;

/** Where they work from now on. */
export const Joined = z.object({ programme: z.string() });
export type Joined = z.infer<typeof Joined>;

export const MakeResetLink = z.strictObject({ id: Id });
export type MakeResetLink = z.infer<typeof MakeResetLink>;

/** What the holder of a reset link is told. */
export const ResetLinkSeen = z.object({ programme: z.string(), name: z.string() });
export type ResetLinkSeen = z.infer<typeof ResetLinkSeen>;
