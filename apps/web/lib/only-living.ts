/** A batch that came of another one. */
interface Child {
  readonly id: string;
  readonly balance: number;
}

/**
 * Where the plants of an empty batch went on to, if all of them went the same way: its one child with plants, or its one child.
 * So the label of a pot still leads to the tree after it was planted out of it.
 *
 * @returns nothing where there is more than one answer
 */
export function onlyLiving(children: readonly Child[]): string | undefined {
  const living = children.filter(({ balance }) => balance > 0);
  const [only, ...others] = living.length > 0 ? living : children;
  return others.length === 0 ? only?.id : undefined;
}
