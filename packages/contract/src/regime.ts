import { z } from 'zod';
import { Day, Id, orNothing, Prose, Words } from './shapes.ts';

/** What keeps the air moving or moist. */
export const Air = z.enum(['air', 'mist', 'both']);
export type Air = z.infer<typeof Air>;

/** How a place is kept from a day on. What is left out is not there: no lamps, no heat, uncovered. */
export const RegimeContent = z.strictObject({
  fromDay: Day,
  /** Hours of lamps a day. */
  lightHours: orNothing(z.number().gt(0, { error: 'leave it empty where there are no lamps' }).max(24).multipleOf(0.25, { error: 'to a quarter of an hour' })),
  /** To what it is heated, °C. */
  heatC: orNothing(z.number().min(-20).max(50).multipleOf(0.1, { error: 'to a tenth of a degree' })),
  air: orNothing(Air),
  /** Such as a lid, fleece, shade cloth. */
  cover: orNothing(Words),
  note: orNothing(Prose),
});
export type RegimeContent = z.infer<typeof RegimeContent>;

export const NewRegime = RegimeContent.extend({ id: Id });
export type NewRegime = z.infer<typeof NewRegime>;

/** A regime with the place that it was told for. */
export const Regime = z.object({
  ...RegimeContent.shape,
  id: Id,
  placeId: Id,
  /** The day from which the next one of that place holds; empty: it holds still. */
  untilDay: Day.nullable(),
});
export type Regime = z.infer<typeof Regime>;

/** Answer of GET places/:id/regimes. */
export const Regimes = z.object({
  /** What holds here today: its own, or that of the nearest place around it that has one. */
  now: Regime.extend({ placeName: z.string() }).nullable(),
  /** Told for this very place, the newest first. */
  own: z.array(Regime),
});
export type Regimes = z.infer<typeof Regimes>;
