import type { Plan } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** A line a donor tree. Where there is no answer the cuttings are left empty, and why stands beside it. */
export function planAsCsv({ name, seasonName, targets }: Plan): string {
  return csvOf(
    ['plan', 'season', 'stand', 'species', 'site', 'plants wanted', 'donor trees wanted', 'counted at stage', 'with a chance of', 'donor tree', 'age in years', 'last cut on', 'living plants now',
      'cuttings to stick', 'of them under the second recipe', 'recipe', 'second recipe', 'figures of', 'no answer because'],
    targets.flatMap((target) => target.answer.trees.map((tree) => [
      name, seasonName, target.stand.name, target.taxon.name, target.site?.name, target.plants, target.donors, target.stage, target.confidence, tree.label, tree.ageYears ?? undefined, tree.cutOn ?? undefined, tree.plantsHere,
      ...(target.answer.refused === null ? [tree.cuttings, tree.ofOther] : [undefined, undefined]), target.recipe ?? undefined, target.otherRecipe ?? undefined, target.figuresOn, target.answer.refused ?? undefined,
    ])),
  );
}
