/**
 * Places in the order of their numbers; equal ones stay as they stood.
 *
 * @param told number by id, as typed; what is no number comes last
 */
export function inWalkingOrder(ids: readonly string[], told: ReadonlyMap<string, unknown>): string[] {
  const numberOf = (id: string): number => {
    const value = told.get(id);
    return typeof value === 'number' ? value : Number.POSITIVE_INFINITY;
  };
  // Two infinities differ by no number at all.
  return ids.toSorted((one, other) => (numberOf(one) === numberOf(other) ? 0 : numberOf(one) - numberOf(other)));
}
