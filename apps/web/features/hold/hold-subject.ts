import type { HoldShown } from '@sprigline/contract';

/** What a release has to name so that it reaches all that the hold reached, and ends this hold alone. */
export const releaseOf = (hold: HoldShown): object => ({ ...reachedBy(hold), holdId: hold.entryId });

/** Plants of the hold that something else holds as well: they stay where they are when it ends. */
export function heldOtherwise(hold: HoldShown, holds: readonly HoldShown[]): number {
  const others = new Set(holds.filter(({ entryId }) => entryId !== hold.entryId).flatMap(({ batches }) => batches.map(({ id }) => id)));
  return hold.batches.reduce((sum, { id, balance }) => sum + (others.has(id) ? (balance ?? 0) : 0), 0);
}

function reachedBy({ subject, subjectId, subjectName, batches }: HoldShown): object {
  const several = { batchIds: batches.map(({ id }) => id) };
  switch (subject) {
    case 'batch':
      return { batchId: subjectId };
    case 'place':
      return { placeId: subjectId };
    case 'donorTree':
      return { donorTreeId: subjectId };
    case 'trip':
      return { tripId: subjectId };
    case 'mediumLot':
      return { mediumLot: subjectName };
    default:
      return several;
  }
}
