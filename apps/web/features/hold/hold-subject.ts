import type { HoldShown } from '@sprigline/contract';

/** What a release has to name so that it reaches all that the hold reached. */
export function releaseOf({ subject, subjectId, subjectName, batches }: HoldShown): object {
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
