import { z } from 'zod';
import { Handle, Id, Words } from './shapes.ts';
import { NewAccount } from './sign-in.ts';

/** A zone of the IANA database that names a region, such as Europe/London. */
export const Zone = z
  .string()
  .regex(/^(UTC|[A-Za-z_]+(\/[A-Za-z0-9_+-]+)+)$/)
  .refine(isZone, { error: 'must be a time zone such as Europe/London' });

function isZone(zone: string): boolean {
  try {
    return Intl.DateTimeFormat('en', { timeZone: zone }) !== undefined;
  } catch {
    return false;
  }
}

const settings = {
  name: Words,
  zone: Zone,
  /** First month of a season, 1..12. */
  seasonStartsIn: z.int().min(1).max(12),
  /** What this programme calls rooted; printed with every rate. */
  rootedMeans: Words,
  /** What a potted plant must be to count as ready. */
  readyMeans: Words,
  /** Days between looks at potted plants for that grade. */
  gradeCheckEveryDays: z.int().min(1).max(366),
};

/** What must be said to open a programme; the rest has a usual value. */
const opening = z.strictObject({
  handle: Handle,
  name: Words,
  zone: Zone,
  seasonStartsIn: settings.seasonStartsIn.default(10),
  rootedMeans: Words.default('one root of 1 cm or more, seen'),
  readyMeans: Words.default('roots hold the pot, shoot upright, no sign of disease'),
});
export type Opening = z.infer<typeof opening>;

export const OpenProgramme = opening.extend({ id: Id });
export type OpenProgramme = z.infer<typeof OpenProgramme>;

/** The first account, the first programme and its owner, by the one-time link of an empty install. */
export const SetUp = z.strictObject({ token: z.string().min(1).max(100), account: NewAccount, programme: opening });
export type SetUp = z.infer<typeof SetUp>;

export const Programme = z.object({ id: Id, handle: Handle, ...settings, isDemo: z.boolean() });
export type Programme = z.infer<typeof Programme>;

/** At least one of them. Needs `If-Match`. */
export const ChangeProgramme = z
  .strictObject(settings)
  .partial()
  .refine((change) => Object.keys(change).length > 0, { error: 'must change something' });
export type ChangeProgramme = z.infer<typeof ChangeProgramme>;
