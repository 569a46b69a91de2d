import type { Store } from './store.ts';

/** A trip that was begun on this device. */
export interface MadeTrip {
  readonly id: string;
  readonly wentOn: string;
  readonly standId: string;
}

/** A donor tree first written down here: the pack knows of it once it was sent and packed anew. */
export interface MadeTree {
  readonly id: string;
  readonly label: string;
  readonly standId: string;
  readonly taxonId: string;
}

/** What was cut here, ready to be stuck. */
export interface MadeBundle {
  readonly id: string;
  readonly tripId: string;
  readonly donorTreeId: string;
  /** The tree's, since a bundle has none. */
  readonly label: string;
  readonly standId: string;
  readonly taxonId: string;
  readonly cuttings: number;
  readonly wentOn: string;
}

/** Records that were made on this device, for whoever chooses from them here. No place is among them. */
export interface Made {
  readonly trips: readonly MadeTrip[];
  readonly donorTrees: readonly MadeTree[];
  readonly bundles: readonly MadeBundle[];
}

const NOTHING: Made = { trips: [], donorTrees: [], bundles: [] };

/** So many of each are remembered, the newest ones; all that was sent is in the books. */
const MOST = 500;

const keyOf = (programme: string): string => `made/${programme}`;

/** The newest first. */
export const madeHere = async (store: Store, programme: string): Promise<Made> => ((await store.get('settings', keyOf(programme))) as Made | undefined) ?? NOTHING;

/**
 * Remembers what was just kept in the outbox. One under an id that is known takes its place. A phone that
 * is too full for it goes on all the same: what is kept must not look as if it were not, and be told twice.
 */
export async function rememberMade(store: Store, programme: string, added: Partial<Made>): Promise<Made> {
  const before = await madeHere(store, programme).catch(() => NOTHING);
  const made: Made = {
    trips: newestFirst(added.trips, before.trips),
    donorTrees: newestFirst(added.donorTrees, before.donorTrees),
    bundles: newestFirst(added.bundles, before.bundles),
  };
  await store.put('settings', made, keyOf(programme)).catch(() => undefined);
  return made;
}

function newestFirst<T extends { readonly id: string }>(added: readonly T[] = [], before: readonly T[]): readonly T[] {
  return [...added, ...before.filter(({ id }) => !added.some((one) => one.id === id))].slice(0, MOST);
}
