import type { PlanAnswer, PlannedTree, PlanStep, PlanTargetContent } from '@sprigline/contract';
import type { TaxonDays } from '@sprigline/contract';
import { DomainError, honestVerdictDays, type PastSticking, planForTarget, rootingChance, secondOpinion, speciesRow, type StickingLine } from '@sprigline/domain';
import type { Figures, RecipeRow } from './figures.queries.ts';

/** Shares that come through a stage, and how many plants' worth they weigh beside own figures: worked examples of handbooks, common practice. */
const PRIOR_OF_STEP = { liner: 0.9, potted: 0.95 } as const;
const PRIOR_PLANTS = 20;
/** The convolution of more trees would keep everybody waiting. */
const MOST_TREES = 60;

export interface Knowledge {
  readonly figures: Figures;
  readonly past: readonly PastSticking[];
  readonly days: TaxonDays & { readonly firstRoots?: number };
}

/**
 * What to stick for a target, from the figures of a day; the same figures give the same answer.
 *
 * @throws DomainError `plan/no-trees` where the stand has no tree of that species that can be cut
 */
export function answerOfFigures(target: PlanTargetContent, { figures, past, days }: Knowledge): PlanAnswer {
  const chosen = figures.trees.slice(0, target.mostTrees ?? MOST_TREES);
  if (chosen.length === 0) throw new DomainError('plan/no-trees', 'no donor tree of that species in that stand is known to stand: add the trees first, or choose another stand');
  const species = speciesRow(figures.scientificName ?? '');
  const rooting = rootingChance(past, species);
  const steps = stepsTo(target.stage, figures);
  const { toEnd, bets, expected, needed, refused } = planForTarget(target, chosen.length, rooting, steps.map(({ rate }) => rate), target.confidence);
  const each = bets?.asPlanned.cuttingsPerDonor ?? 0;
  const trees = chosen.map(({ isCutLately: _, ...tree }): PlannedTree => ({ ...tree, cuttings: each, ofOther: target.otherRecipeVersionId === null ? 0 : Math.floor(each / 2) }));
  const opinions = secondOpinion({
    // Without an answer it is still asked how they would be stuck: a cutting of each tree stands for that.
    lines: trees.flatMap((tree) => linesOf(tree, target, figures.recipes)), species, past, day: target.stickOn ?? figures.today,
    firstCheck: days.firstCheck, verdict: days.verdict, ownFirstRootsDays: days.firstRoots,
    donorsWanted: target.donors, donorsAlready: figures.living.filter((donor) => !chosen.some(({ donorId }) => donorId === donor)).length, donorsElsewhere: [],
    placesPerDonor: target.placesPerDonor ?? undefined,
  });
  return {
    rooting, steps, toEnd, treesInAll: figures.trees.length, trees, refused: refused ?? null, bets: bets ?? null, expected: expected ?? null,
    needed: needed ? { once: needed.once, eachStage: needed.eachStage, stages: needed.stages.map((plants, at) => ({ stage: (['cutting', ...steps.map(({ from }) => from)] as const)[at] ?? 'cutting', plants })) } : null,
    species: species ? { name: species.name, source: species.source } : null,
    opinions: opinions.map((one) => ({ ...one, donors: [...one.donors], facts: { ...one.facts } })),
    firstCheckDays: days.firstCheck.days, verdictDays: honestVerdictDays({ species, verdict: days.verdict }),
  };
}

/** Stages after rooting and before the one that is counted. A plant that skipped one came through it all the same. */
function stepsTo(stage: PlanTargetContent['stage'], { stages }: Figures): PlanStep[] {
  const before = stage === 'planted' ? (['liner', 'potted'] as const) : stage === 'potted' ? (['liner'] as const) : [];
  return before.map((from) => {
    const own = stages.find((one) => one.stage === from) ?? { goneOn: 0, settled: 0 };
    const prior = PRIOR_OF_STEP[from];
    return { from, goneOn: own.goneOn, settled: own.settled, prior, rate: (own.goneOn + prior * PRIOR_PLANTS) / (own.settled + PRIOR_PLANTS) };
  });
}

function linesOf(tree: PlannedTree, target: PlanTargetContent, recipes: readonly RecipeRow[]): StickingLine[] {
  const line = (recipeId: string | null, cuttings: number): StickingLine => {
    const recipe = recipes.find(({ id }) => id === recipeId);
    return {
      donorId: tree.donorId, donorLabel: tree.label, ageYears: tree.ageYears ?? undefined, ageClass: tree.ageClass ?? undefined, cuttings,
      lengthCm: target.lengthCm ?? undefined, wood: target.wood ?? undefined, lightHours: target.lightHours ?? undefined,
      recipeId: recipeId ?? undefined, medium: recipe?.medium ?? undefined, hormonePpm: recipe?.hormonePpm ?? undefined, hormoneForm: recipe?.hormoneForm ?? undefined,
    };
  };
  const own = line(target.recipeVersionId, Math.max(1, tree.cuttings - tree.ofOther));
  return target.otherRecipeVersionId === null ? [own] : [own, line(target.otherRecipeVersionId, Math.max(1, tree.ofOther))];
}
