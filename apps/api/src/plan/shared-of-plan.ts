import type { Opinion, Plan, PlannedTree, PlanTarget, SharedPlan, SharedTarget } from '@sprigline/contract';
import { strictestSensitivity } from '@sprigline/domain';
import type { SharedHead } from './share.queries.ts';

/**
 * A plan as people outside see it: written anew field by field, so that nothing slips through that was added elsewhere.
 *
 * Neither the plan's own name and note, nor sites, recipes by name, or people: all of these are words that may tell a place.
 */
export function sharedOfPlan({ seasonName, targets }: Plan, { programme, rootedMeans, expiresAt, targets: told }: SharedHead): SharedPlan {
  return { programme, seasonName, rootedMeans, expiresAt: expiresAt.toISOString(), targets: targets.map((target) => sharedTarget(target, told.find(({ id }) => id === target.id))) };
}

function sharedTarget(target: PlanTarget, told: SharedHead['targets'][number] | undefined): SharedTarget {
  const { stage, plants, donors, confidence, stickOn, lengthCm, wood, lightHours, placesPerDonor, figuresOn, answer } = target;
  const { rooting, steps, toEnd, treesInAll, trees, refused, bets, expected, needed, species, opinions, firstCheckDays, verdictDays } = answer;
  const numbers = new Map(trees.map(({ label }, at) => [label, String(at + 1)]));
  return {
    stage, plants, donors, confidence, stickOn, lengthCm, wood, lightHours, placesPerDonor, figuresOn,
    // The name of a stand whose place is hidden would lead there as surely as a position.
    stand: told && strictestSensitivity(told.classes) === 0 ? target.stand.name : null,
    taxon: target.taxon.name, medium: told?.medium ?? null, hormone: told?.hormone ?? null, hormonePpm: told?.hormonePpm ?? null,
    answer: {
      rooting, steps, toEnd, treesInAll, refused, bets, expected, needed, species, firstCheckDays, verdictDays,
      trees: trees.map((tree, at) => ({ number: at + 1, age: ageOf(tree), cuttings: tree.cuttings, ofOther: tree.ofOther })),
      opinions: opinions.map((opinion): Opinion => ({ ...opinion, donors: opinion.donors.map((label) => numbers.get(label) ?? '?') })),
    },
  };
}

/** The exact age of an old tree may tell which one it is. */
function ageOf({ ageYears, ageClass }: PlannedTree): SharedTarget['answer']['trees'][number]['age'] {
  if (ageYears === null) return ageClass === 'old' ? 'over-hundred' : ageClass === 'juvenile' ? 'few-years' : null;
  if (ageYears < 5) return 'few-years';
  return ageYears <= 10 ? 'to-ten' : ageYears <= 100 ? 'to-hundred' : 'over-hundred';
}
