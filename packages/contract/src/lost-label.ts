import { z } from 'zod';
import { BatchInList } from './batch.ts';
import { Stage } from './entry/words.ts';
import { Id } from './shapes.ts';

/** How the leaves of a plant look; of a batch, as they were on the donor tree. */
export const Foliage = z.enum(['juvenile', 'changing', 'adult']);
export type Foliage = z.infer<typeof Foliage>;

/** What can be seen of plants without a label. All of it may be left out. */
export const LostPlantQuery = z.object({
  stage: Stage.optional(),
  taxonId: Id.optional(),
  /** Counted from the tray's label. */
  row: z.coerce.number().int().min(1).max(99).optional(),
  foliage: Foliage.optional(),
  /** What lost its label: loose plants, or a whole row whose plants stand in it as they were stuck. Of such a row, what was stuck into it comes first. */
  lost: z.enum(['plants', 'row']).optional(),
});
export type LostPlantQuery = z.infer<typeof LostPlantQuery>;

/** A batch that they may be of. */
export const LabelCandidate = BatchInList.extend({
  /** Plants of it that the last counts could not find, taken together. */
  missing: z.int(),
  foliage: Foliage.nullable(),
  /** What speaks for it and against it. */
  signs: z.array(z.enum(['missing', 'row', 'otherRow', 'foliage', 'otherFoliage'])),
});
export type LabelCandidate = z.infer<typeof LabelCandidate>;

/** Answer of GET places/:id/candidates: the likeliest first, no more than sixty. */
export const LabelCandidates = z.object({ candidates: z.array(LabelCandidate), /** Of so many in all. */ of: z.int() });
export type LabelCandidates = z.infer<typeof LabelCandidates>;
