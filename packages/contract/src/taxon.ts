import { z } from 'zod';
import { Id, orNothing, Sensitivity, Words } from './shapes.ts';

const WaitDays = z.int().min(1).max(3_650);

/** A kind of tree that the programme brings back. Body of PUT. */
export const TaxonContent = z.strictObject({
  scientificName: Words,
  commonName: orNothing(Words),
  /** How much the places of its wild trees are hidden. A change cuts all cells anew. */
  sensitivity: Sensitivity.default(2),
  /** Days from sticking until roots are looked for. Null: the programme's own history, or Sprigline's default. */
  firstCheckDays: orNothing(WaitDays),
  /** Until what has not rooted is called. */
  verdictDays: orNothing(WaitDays),
  /** Until what has rooted goes on. */
  movingOnDays: orNothing(WaitDays),
});
export type TaxonContent = z.infer<typeof TaxonContent>;

export const NewTaxon = TaxonContent.extend({ id: Id });
export type NewTaxon = z.infer<typeof NewTaxon>;

export const Taxon = z.object(NewTaxon.shape);
export type Taxon = z.infer<typeof Taxon>;
