import type { Look } from './entry.ts';
import { LOOKS } from './entry.ts';

/**
 * On which day the whole batch was last seen, for each strength of look.
 *
 * A plant gone today may have been gone for long if it was only ever looked at
 * from above: a loss lies after the last look that was at least as strong as
 * the one that missed it.
 */
export interface Sights {
  readonly atLeast: Readonly<Partial<Record<Look, string>>>;
  readonly last?: { readonly day: string; readonly look: Look } | undefined;
}

export const neverSeen: Sights = { atLeast: {} };

/** An opening counts as the strongest look: somebody had every plant in their hands. */
export const OPENING_LOOK: Look = 'lifted';

export function sawAll({ atLeast }: Sights, day: string, look: Look): Sights {
  const seen = { ...atLeast };
  for (const weaker of LOOKS.slice(0, LOOKS.indexOf(look) + 1)) seen[weaker] = day;
  return { atLeast: seen, last: { day, look } };
}

export const isStronger = (look: Look, than: Look): boolean => LOOKS.indexOf(look) > LOOKS.indexOf(than);
