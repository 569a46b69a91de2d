import { z } from 'zod';
import { Day, Id, orNothing, Prose, Words } from './shapes.ts';

/** What is done to cutting and medium on the day. Follow the label and your local code with every hormone. */
export const NewRecipeVersion = z.strictObject({
  id: Id,
  hormone: orNothing(Words),
  /** Milligrams in a litre, or in a kilogram of talc. */
  hormonePpm: orNothing(z.int().min(0).max(100_000)),
  hormoneForm: orNothing(z.enum(['talc', 'quickDip', 'soak', 'gel'])),
  medium: orNothing(Words),
  wound: orNothing(Words),
  steps: orNothing(Prose),
  madeOn: Day,
});
export type NewRecipeVersion = z.infer<typeof NewRecipeVersion>;

/** Never changed: another way of doing it is another version. */
export const RecipeVersion = z.object({ ...NewRecipeVersion.shape, /** Counted from 1. */ version: z.int() });
export type RecipeVersion = z.infer<typeof RecipeVersion>;

/** Body of PUT: the name is all that can be changed. */
export const RecipeContent = z.strictObject({ name: Words });
export type RecipeContent = z.infer<typeof RecipeContent>;

export const NewRecipe = RecipeContent.extend({ id: Id, version: NewRecipeVersion });
export type NewRecipe = z.infer<typeof NewRecipe>;

export const Recipe = z.object({ id: Id, name: Words, /** Newest first. */ versions: z.array(RecipeVersion) });
export type Recipe = z.infer<typeof Recipe>;
