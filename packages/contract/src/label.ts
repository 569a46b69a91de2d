import { z } from 'zod';
import { LabelCode } from './entry/words.ts';
import { ProgrammePath } from './shapes.ts';

export const LabelPath = ProgrammePath.extend({ code: LabelCode });
export type LabelPath = z.infer<typeof LabelPath>;

/** Answer of GET labels/:code: the batch that bears it. */
export const Label = z.object({ code: z.string(), batchId: z.uuid(), givenAt: z.string() });
export type Label = z.infer<typeof Label>;
