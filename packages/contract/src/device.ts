import { z } from 'zod';
import { Day, Id, orNothing, Words } from './shapes.ts';

/** A device that had something unsent, or had packed a walk, and was not heard for so long, is told as silent. Hours. */
export const DEVICE_SILENT_AFTER_HOURS = 24;

/** What a browser that logs says of itself: at each sending, and when it packs. It holds no entry back, and none depends on it. */
export const TellDevice = z
  .strictObject({
    /** What people call it, such as "Bench tablet". */
    name: orNothing(Words),
    /** Entries, records and photos that are only on it. */
    unsent: z.int().min(0).max(1_000_000),
    /** The day of the oldest of them, by its own clock. */
    oldestUnsentOn: orNothing(Day),
    /** Which build keeps it going without a signal. */
    app: orNothing(Words),
    /** It has just taken a walk along. */
    hasPacked: z.boolean().default(false),
  })
  .refine(({ unsent, oldestUnsentOn }) => unsent > 0 === (oldestUnsentOn !== null), { path: ['oldestUnsentOn'], error: 'is told where something is unsent, and only there' });
export type TellDevice = z.infer<typeof TellDevice>;

/** A browser that logs, as it was last heard. */
export const Device = z.object({
  id: Id,
  name: z.string().nullable(),
  /** Who was signed in when it was last heard. */
  person: z.string(),
  firstHeardAt: z.iso.datetime(),
  lastHeardAt: z.iso.datetime(),
  packedAt: z.iso.datetime().nullable(),
  unsent: z.int(),
  oldestUnsentOn: Day.nullable(),
  app: z.string().nullable(),
  /** Entries may be stuck on it: it had some, or had packed a walk, and was not heard for a day. */
  isSilent: z.boolean(),
  /** It is heard, and something has been only on it for longer than yesterday and today: refused, or nobody is signed in there. */
  isStuck: z.boolean(),
  /** Put aside as lost or no longer used. It comes back by itself when it is heard again. */
  setAside: z.object({ at: z.iso.datetime(), by: z.string(), reason: z.string() }).nullable(),
});
export type Device = z.infer<typeof Device>;

/** Why it is put aside: lost, or no longer used. */
export const SetDeviceAside = z.strictObject({ reason: Words });
export type SetDeviceAside = z.infer<typeof SetDeviceAside>;
