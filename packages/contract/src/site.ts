import { z } from 'zod';
import { Cell } from './position.ts';
import { Id, orNothing, Prose, Words } from './shapes.ts';

/** Where a site lies, as coarse as the caller says; only the cell is kept. */
export const SiteCell = z.strictObject({
  latitude: z.number().min(-90).max(90),
  longitude: z.number().min(-180).max(180),
  degrees: z.literal([0.1, 0.01, 0.001]),
});
export type SiteCell = z.infer<typeof SiteCell>;

/** A place where trees are planted out. Body of PUT. */
export const SiteContent = z.strictObject({
  name: Words,
  walkOrder: z.int().min(0).max(100_000).default(0),
  /** Whose land, in words. */
  land: orNothing(Words),
  partnerId: orNothing(Id),
  note: orNothing(Prose),
  cell: orNothing(SiteCell),
});
export type SiteContent = z.infer<typeof SiteContent>;

export const NewPlot = z.strictObject({
  id: Id,
  name: Words,
  walkOrder: z.int().min(0).max(100_000).default(0),
  note: orNothing(Prose),
});
export type NewPlot = z.infer<typeof NewPlot>;

export const NewSite = SiteContent.extend({ id: Id, plots: z.array(NewPlot).max(200).default([]) });
export type NewSite = z.infer<typeof NewSite>;

export const Site = z.object({ ...SiteContent.shape, id: Id, cell: Cell.nullable(), plots: z.array(z.object(NewPlot.shape)) });
export type Site = z.infer<typeof Site>;
