import type { AllowFor, CompareBy } from '@sprigline/contract';
import type { Nuisance } from '@sprigline/domain';
import { BENCH, RECIPE_PARTS, SEASON_NAME, SEASON_YEAR } from '../reading/chosen-stickings.queries.ts';

interface Arm {
  /** SQL for what is the same within an arm, null where it is not told; and for its name. */
  readonly key: string;
  readonly name: string;
  /** What such arms may be mixed up with. What they are by themselves, or never share, is left out. */
  readonly mayHide: readonly Nuisance[];
  /** SQL for the rest of the recipe, which must be the same in both. */
  readonly recipe: string;
}

const { hormone: HORMONE, medium: MEDIUM, wound: WOUND } = RECIPE_PARTS;
/** Fields in a fixed order: a field that is not told is one of its own. */
const together = (...parts: readonly string[]): string => `CASE WHEN v.id IS NOT NULL THEN jsonb_build_array(${parts.join(', ')})::text END`;

const WHOLE = 'v.id::text';

/**
 * What can be compared, told of a sticking `s` with its donor tree `d`, stand `st`, species `t`, recipe `r`
 * of version `v`, the bench `bench` it was stuck on with what holds it, `house`, and its programme `p`.
 */
export const ARMS: Readonly<Record<CompareBy, Arm>> = {
  recipe: { key: 'r.id::text', name: 'r.name', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'stand', 'species'], recipe: 'NULL' },
  hormone: { ...HORMONE, mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: together(MEDIUM.key, WOUND.key) },
  medium: { ...MEDIUM, mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: together(HORMONE.key, WOUND.key) },
  wound: { ...WOUND, mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: together(HORMONE.key, MEDIUM.key) },
  ageClass: { key: 'd.age_class', name: 'd.age_class', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: WHOLE },
  taxon: { key: 's.taxon_id::text', name: 'coalesce(t.common_name, t.scientific_name)', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand'], recipe: WHOLE },
  stand: { key: 'st.id::text', name: 'st.name', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'species'], recipe: WHOLE },
  season: { key: `(${SEASON_YEAR})::text`, name: SEASON_NAME, mayHide: ['donor', 'tray', 'bench', 'team', 'recipe', 'stand', 'species'], recipe: WHOLE },
  place: { ...BENCH, mayHide: ['donor', 'tray', 'day', 'team', 'recipe', 'stand', 'species'], recipe: WHOLE },
};

/** What is allowed for is no longer hidden. */
const ALLOWED_FOR: Readonly<Record<AllowFor, Nuisance | undefined>> = { season: undefined, ageClass: undefined, taxon: 'species', stand: 'stand', place: 'bench' };

export const askedOf = (by: CompareBy, allowFor: AllowFor | undefined): Nuisance[] => ARMS[by].mayHide.filter((nuisance) => allowFor === undefined || nuisance !== ALLOWED_FOR[allowFor]);
