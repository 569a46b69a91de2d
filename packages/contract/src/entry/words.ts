import { z } from 'zod';
import { Plants, SomePlants, Words } from '../shapes.ts';

export const Stage = z.enum(['cutting', 'liner', 'potted', 'planted']);
export type Stage = z.infer<typeof Stage>;

/** How a batch was seen, weakest first. */
export const Look = z.enum(['look', 'tug', 'lifted']);
export type Look = z.infer<typeof Look>;

export const Certainty = z.enum(['seen', 'likely', 'unknown']);

/** Some of the dead, with the cause as the eye sees it. */
export const Dead = z.strictObject({ n: SomePlants, cause: Words, certainty: Certainty.default('seen') });

/** Cuttings hurt before they were stuck, and how. */
export const Damaged = z.strictObject({ n: SomePlants, how: Words });

/** How hard the wood of a cutting is: this spring's, half ripe, or dormant. */
export const Wood = z.enum(['softwood', 'semiHardwood', 'hardwood']);
export type Wood = z.infer<typeof Wood>;

/** Rows of a tray, counted from its label: "3" or "3-5". */
export const Rows = z.string().regex(/^[1-9]\d?(-[1-9]\d?)?$/, { error: 'must be a row or rows such as 3 or 3-5' });

export const LabelCode = z.string().trim().min(1).max(40);

export const Container = Words;
export const Medium = Words;

export const rootsWithinAlive = (seen: { alive: number; rooted?: number | undefined; callused?: number | undefined }): boolean =>
  (seen.rooted ?? 0) + (seen.callused ?? 0) <= seen.alive;

export { Plants, SomePlants };
