/** What photos may be of, by the noun in its address, and how the API is told of it. */
export const SUBJECT_FIELD = { 'batches': 'batchId', 'donor-trees': 'donorTreeId', 'places': 'placeId' } as const;
export type PhotoNoun = keyof typeof SUBJECT_FIELD;

export interface PhotoSubject {
  readonly noun: PhotoNoun;
  readonly id: string;
}
