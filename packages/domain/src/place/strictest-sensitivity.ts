/**
 * The class that hides most among several: a tree is as hidden as its kind, its
 * stand, or whatever else asks for it.
 *
 * The classes are not in order by number: 1 withholds, 2 to 4 hide less and less,
 * and 0 hides nothing.
 *
 * @param classes 0..4 each; none at all answers 0
 */
export function strictestSensitivity(classes: readonly number[]): number {
  const hiding = classes.filter((one) => one > 0);
  return hiding.length === 0 ? 0 : Math.min(...hiding);
}
