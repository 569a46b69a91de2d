import 'server-only';
import { recipesOf, sitesOf, standsOf, taxaOf } from '../../lib/lists.ts';
import type { TargetChoices } from './target-fields.tsx';

/** All that a target's form chooses from. */
export async function targetChoices(programme: string): Promise<TargetChoices> {
  const [stands, taxa, sites, recipes] = await Promise.all([standsOf(programme), taxaOf(programme), sitesOf(programme), recipesOf(programme)]);
  return { stands, taxa, sites, recipes };
}
