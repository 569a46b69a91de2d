import type { Supply } from '@sprigline/contract';

/** Donor trees of which more is set aside than the request allows of one. A warning: somebody may have chosen so. */
export function overTheMost(supplies: readonly Supply[], most: number | null): { tree: string; taken: number; most: number }[] {
  if (most === null) return [];
  const taken = new Map<string, number>();
  for (const { donorTree, reserved } of supplies) if (donorTree) taken.set(donorTree.label, (taken.get(donorTree.label) ?? 0) + reserved);
  return [...taken].filter(([, n]) => n > most).map(([tree, n]) => ({ tree, taken: n, most }));
}
