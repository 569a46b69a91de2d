import { z } from 'zod';

/** One deed concerning records or rights. Ledger entries carry their own authors and are not told again here. */
export const AuditRow = z.object({
  id: z.string(),
  at: z.iso.datetime(),
  /** Who did it, by name. */
  person: z.string().nullable(),
  /** The session or link that brought it. */
  deliveredBy: z.string(),
  /** Such as `person.removed`. */
  act: z.string(),
  subjectKind: z.string(),
  subjectId: z.string().nullable(),
});
export type AuditRow = z.infer<typeof AuditRow>;
