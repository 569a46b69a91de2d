import { z } from 'zod';
import { Id, orNothing, Sensitivity, Words } from './shapes.ts';

/** A kind of tree that the programme brings back. Body of PUT. */
export const TaxonContent = z.strictObject({
  scientificName: Words,
  commonName: orNothing(Words),
  /** How much the places of its wild trees are hidden. A change cuts all cells anew. */
  sensitivity: Sensitivity.default(2),
});
export type TaxonContent = z.infer<typeof TaxonContent>;

export const NewTaxon = TaxonContent.extend({ id: Id });
export type NewTaxon = z.infer<typeof NewTaxon>;

export const Taxon = z.object(NewTaxon.shape);
export type Taxon = z.infer<typeof Taxon>;
