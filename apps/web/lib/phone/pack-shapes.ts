import type { Pack, PackedBooks, PlacePack, Round } from '@sprigline/contract';

/** What holds wherever one walks, and since when it lies on this device. */
export interface KeptPack extends Omit<Pack, 'bundles' | 'recipes' | 'labels'>, Partial<Pick<Pack, 'bundles' | 'recipes' | 'labels'>> {
  // What can be stuck, and labels, are not in packs that were kept before they were packed.
  readonly packedAt: number;
}

/** Along what one walks: what lies in a place, or the lines of a printed list. */
export type WalkKind = 'places' | 'work-lists';

/** A walk that was packed: its batches, and what their books are made of. */
export interface KeptWalk {
  readonly programme: string;
  readonly kind: WalkKind;
  /** Of the place or of the list. */
  readonly id: string;
  /** Of a place its name with all that it lies in, since every house may have a bench 1; of a list its kind. */
  readonly name: string;
  readonly packedAt: number;
  readonly round: Round;
  readonly books: readonly PackedBooks[];
  /** Not in walks that were kept before labels were packed. */
  readonly labels?: PlacePack['labels'] | undefined;
}
