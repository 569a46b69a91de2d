/** A batch of which only the donors that may be in it are known. */
export interface MixedBatch {
  /** Donors (clone groups), each named once. */
  readonly candidates: readonly string[];
  /** Whole plants; 0 says nothing. */
  readonly plants: number;
}
