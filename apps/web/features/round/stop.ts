import type { Round } from '@sprigline/contract';

export type Stage = 'cutting' | 'liner' | 'potted' | 'planted';
export type Look = 'look' | 'tug' | 'lifted';

/** One batch on the walk: what is known of it before anybody looks. Never its balance, so that nobody counts what they expect. */
export interface Stop {
  readonly batchId: string;
  readonly label: string;
  readonly stage: Stage;
  readonly donor: string | null;
  readonly stand: string | null;
  readonly species: string | null;
  readonly place: string;
  readonly placeId: string;
  readonly isTray: boolean;
  readonly rows: string | null;
  readonly held: boolean;
  readonly openedOn: string;
  readonly lastCount: { readonly day: string; readonly alive: number; readonly rooted: number | null; readonly look: Look } | null;
}

/** The walk as one line: place after place, batch after batch. */
export function stopsOf(round: Round): Stop[] {
  return round.stops.flatMap(({ place, path, batches }) =>
    batches.map((batch) => ({
      batchId: batch.id,
      label: batch.label ?? `…${batch.id.slice(-6)}`,
      stage: batch.stage,
      donor: batch.donorTree?.label ?? null,
      stand: batch.stand?.name ?? null,
      species: batch.taxon?.name ?? null,
      // The place of the round is in the heading already.
      place: [...path.slice(1), place.name].join(' › '),
      placeId: place.id,
      isTray: place.kind === 'tray',
      rows: batch.rows,
      held: batch.held,
      openedOn: batch.openedOn,
      lastCount: batch.lastCount,
    })),
  );
}
