import type { Pack, PackedBooks, Round } from '@sprigline/contract';

/** What holds wherever one walks, and since when it lies on this device. */
export interface KeptPack extends Pack {
  readonly packedAt: number;
}

/** A walk that was packed: a place with its batches, and what their books are made of. */
export interface KeptWalk {
  readonly programme: string;
  readonly placeId: string;
  readonly name: string;
  readonly packedAt: number;
  readonly round: Round;
  readonly books: readonly PackedBooks[];
}
