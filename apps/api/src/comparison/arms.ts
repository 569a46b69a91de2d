import type { AllowFor, CompareBy } from '@sprigline/contract';
import type { Nuisance } from '@sprigline/domain';
import { SEASON_NAME, SEASON_YEAR } from '../reading/chosen-stickings.queries.ts';

interface Arm {
  /** SQL for what is the same within an arm, null where it is not told; and for its name. */
  readonly key: string;
  readonly name: string;
  /** What such arms may be mixed up with. What they are by themselves, or never share, is left out. */
  readonly mayHide: readonly Nuisance[];
  /** SQL for the rest of the recipe, which must be the same in both. */
  readonly recipe: string;
}

const HORMONE = `CASE WHEN v.id IS NULL THEN NULL WHEN v.hormone IS NULL THEN 'none' ELSE lower(concat_ws(' ', v.hormone, v.hormone_ppm, v.hormone_form)) END`;
const MEDIUM = 'lower(v.medium)';
const WOUND = `CASE WHEN v.id IS NULL THEN NULL ELSE coalesce(lower(v.wound), 'none') END`;
/** Fields in a fixed order: a field that is not told is one of its own. */
const together = (...parts: readonly string[]): string => `CASE WHEN v.id IS NOT NULL THEN jsonb_build_array(${parts.join(', ')})::text END`;

const WHOLE = 'v.id::text';

/**
 * What can be compared, told of a sticking `s` with its donor tree `d`, stand `st`, species `t`, recipe `r`
 * of version `v`, the bench `bench` it was stuck on with what holds it, `house`, and its programme `p`.
 */
export const ARMS: Readonly<Record<CompareBy, Arm>> = {
  recipe: { key: 'r.id::text', name: 'r.name', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'stand', 'species'], recipe: 'NULL' },
  hormone: { key: HORMONE, name: `concat_ws(' ', v.hormone, nullif(v.hormone_ppm, 0) || ' ppm')`, mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: together(MEDIUM, WOUND) },
  medium: { key: MEDIUM, name: 'v.medium', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: together(HORMONE, WOUND) },
  wound: { key: WOUND, name: 'v.wound', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: together(HORMONE, MEDIUM) },
  ageClass: { key: 'd.age_class', name: 'd.age_class', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species'], recipe: WHOLE },
  taxon: { key: 's.taxon_id::text', name: 'coalesce(t.common_name, t.scientific_name)', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand'], recipe: WHOLE },
  stand: { key: 'st.id::text', name: 'st.name', mayHide: ['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'species'], recipe: WHOLE },
  season: { key: `(${SEASON_YEAR})::text`, name: SEASON_NAME, mayHide: ['donor', 'tray', 'bench', 'team', 'recipe', 'stand', 'species'], recipe: WHOLE },
  place: { key: 'bench.id::text', name: `concat_ws(' › ', house.name, bench.name)`, mayHide: ['donor', 'tray', 'day', 'team', 'recipe', 'stand', 'species'], recipe: WHOLE },
};

/** What is allowed for is no longer hidden. */
const ALLOWED_FOR: Readonly<Record<AllowFor, Nuisance | undefined>> = { season: undefined, ageClass: undefined, taxon: 'species', stand: 'stand', place: 'bench' };

export const askedOf = (by: CompareBy, allowFor: AllowFor | undefined): Nuisance[] => ARMS[by].mayHide.filter((nuisance) => allowFor === undefined || nuisance !== ALLOWED_FOR[allowFor]);
