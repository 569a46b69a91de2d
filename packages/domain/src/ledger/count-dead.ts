import type { Dead } from './entry.ts';

/** Plants in a list of dead, whatever they died of. */
export const countDead = (dead: readonly Dead[]): number => dead.reduce((sum, { n }) => sum + n, 0);
