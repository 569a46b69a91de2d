import type { PlantRequest, Supply } from '@sprigline/contract';
import type { Messages } from 'next-intl';

export interface PickLine extends Supply {
  readonly n: number;
}

/** What to take: what is set aside and still there; while nothing is, what the pick proposes. */
export function pickLines(supplies: readonly Supply[]): { readonly lines: readonly PickLine[]; readonly isProposed: boolean } {
  const isAside = supplies.some(({ reserved }) => reserved > 0);
  const lines = supplies.map((supply) => ({ ...supply, n: isAside ? supply.covered : supply.proposed })).filter(({ n }) => n > 0);
  return { lines, isProposed: !isAside && lines.length > 0 };
}

/** Why there is nothing to take. */
export const nothingToPick = ({ state }: PlantRequest, said: Messages['requests']): string =>
  state === 'gone' ? said.pickGone : state === 'withdrawn' ? said.pickWithdrawn : said.pickEmpty;
