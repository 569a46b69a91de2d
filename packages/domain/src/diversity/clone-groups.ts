/** Two donor trees that are stated to be one clone. */
export interface ClonePair {
  readonly tree: string;
  readonly other: string;
}

/**
 * Which donor trees are one clone: all that are tied by statements, directly or through others.
 *
 * Each group is called by the smallest id in it, by code unit, so that every machine
 * arrives at the same name in whatever order the pairs come. A tree that is in no
 * pair is not answered: it is taken to be distinct.
 *
 * @param pairs those whose last statement says "one clone"
 * @returns per tree the name of its group
 */
export function cloneGroups(pairs: Iterable<ClonePair>): Map<string, string> {
  const above = new Map<string, string>();
  const rootOf = (tree: string): string => {
    let root = tree;
    for (let up = above.get(root); up !== undefined && up !== root; up = above.get(root)) root = up;
    return root;
  };
  for (const { tree, other } of pairs) {
    const [a, b] = [rootOf(tree), rootOf(other)];
    const [low, high] = a < b ? [a, b] : [b, a];
    above.set(low, low);
    above.set(high, low);
  }
  return new Map([...above.keys()].map((tree) => [tree, rootOf(tree)]));
}
