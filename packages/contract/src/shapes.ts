import { z } from 'zod';

/** UUID as sent by callers: version 7 for new things, version 8 for those made from an imported sheet. */
export const Id = z.union([z.uuidv7(), z.uuid({ version: 'v8' })], { error: 'must be a UUID of version 7 (or 8 for an import)' });
export type Id = z.infer<typeof Id>;

/** A calendar day such as 2026-11-25, in the programme's zone; a day has no time of its own. */
export const Day = z.iso.date({ error: 'must be a day such as 2026-11-25' });
export type Day = z.infer<typeof Day>;

/** Whole plants. The upper bound keeps sums within 32 bits. */
export const Plants = z.int({ error: 'must be a whole number of plants' }).min(0).max(1_000_000);

/** At least one plant. */
export const SomePlants = Plants.min(1, { error: 'must be at least 1' });

/** Text that says something: trimmed, not empty, at most 200 characters. */
export const Words = z.string().trim().min(1, { error: 'must not be empty' }).max(200);

/** A longer text, at most 4,000 characters. */
export const Prose = z.string().trim().min(1).max(4_000);

/** The short name of a programme in addresses. */
export const Handle = z.string().regex(/^[a-z0-9](?:[a-z0-9-]{0,38}[a-z0-9])?$/, {
  error: 'must be 1 to 40 of a-z, 0-9 and hyphens, such as harrowdale',
});

export const ProgrammePath = z.object({ programme: Handle });
export type ProgrammePath = z.infer<typeof ProgrammePath>;

/** Address of one thing of a programme. */
export const ThingPath = ProgrammePath.extend({ id: Id });
export type ThingPath = z.infer<typeof ThingPath>;

/** Sensitivity of a place after Chapman 2020 (10.15468/doc-5jp4-5g10): 1 withheld, 2 0.1 degree, 3 0.01, 4 0.001; 0 not sensitive. */
export const Sensitivity = z.int().min(0).max(4);

/** May be left out or be null: both say "not told". */
export const orNothing = <S extends z.ZodType>(shape: S) => shape.nullable().default(null);

/** Which part of a long list. The answer's `Link` header names the next part. */
export const PageQuery = z.object({
  /** Taken from the `Link` of the part before. */
  after: z.string().max(400).optional(),
  limit: z.coerce.number().int().min(1).max(200).default(50),
});
export type PageQuery = z.infer<typeof PageQuery>;
