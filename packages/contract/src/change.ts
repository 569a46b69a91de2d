import { z } from 'zod';
import { PageQuery } from './shapes.ts';

/**
 * What a change can be of: a noun whose address answers the thing as it is now. An entry is read with
 * the batches that it stands on.
 */
export const CHANGE_KINDS = [
  'entry', 'batch', 'sticking', 'stand', 'donor-tree', 'taxon', 'trip', 'recipe', 'place', 'site', 'workday', 'request', 'partner', 'person', 'programme',
] as const;
export const ChangeKind = z.enum(CHANGE_KINDS);
export type ChangeKind = z.infer<typeof ChangeKind>;

/** Query of GET changes. Not told: permissions, keys, invitations, printed lists, sheets that were brought, readings of loggers. */
export const ChangesQuery = PageQuery.extend({
  /** `now` answers nothing but the place from which to follow: ask for it, read the lists, then follow. */
  from: z.enum(['start', 'now']).default('start'),
});
export type ChangesQuery = z.infer<typeof ChangesQuery>;

/** Something is other than it was: read it again. A thing may be told more often than it changed, and is never left out. */
export const Change = z.object({
  kind: ChangeKind,
  id: z.uuid(),
  /** Told for the first time. */
  isMade: z.boolean(),
  /** When it reached this install. The order of the list is another: a slow writer’s change comes when it was there to be read. */
  at: z.iso.datetime(),
  /** The kind of an entry, such as `counted`. */
  said: z.string().nullable(),
  /** What an entry is about: the batches that it says something of, its place, tree, trip and workday, the entry that it corrects. */
  on: z.array(z.object({ kind: ChangeKind, id: z.uuid() })),
});
export type Change = z.infer<typeof Change>;

/** Answer of GET changes. Its `Link` always names what to ask for next, also when there is nothing new: keep it, and ask again later. */
export const Changes = z.object({
  changes: z.array(Change),
  /** Nothing else has changed so far. While it is false a part may be empty, and the next one is not. */
  isUpToDate: z.boolean(),
});
export type Changes = z.infer<typeof Changes>;
