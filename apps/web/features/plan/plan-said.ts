import { number, text } from '../../lib/form-values.ts';

/** What the forms say, as the API wants it. */
export const planSaid = (form: FormData) => ({ name: text(form, 'name'), season: number(form, 'season'), note: text(form, 'note') ?? null });

export const targetSaid = (form: FormData) => ({
  standId: text(form, 'standId'), taxonId: text(form, 'taxonId'), siteId: text(form, 'siteId') ?? null, stage: text(form, 'stage'),
  plants: number(form, 'plants'), donors: number(form, 'donors'), confidence: number(form, 'confidence'), mostTrees: number(form, 'mostTrees') ?? null,
  stickOn: text(form, 'stickOn') ?? null, recipeVersionId: text(form, 'recipeVersionId') ?? null, otherRecipeVersionId: text(form, 'otherRecipeVersionId') ?? null,
  lengthCm: number(form, 'lengthCm') ?? null, wood: text(form, 'wood') ?? null, lightHours: number(form, 'lightHours') ?? null, placesPerDonor: number(form, 'placesPerDonor') ?? null,
});
