import type { TrayCards } from '@sprigline/contract';

/** One card, stuck into a tray or a group of rows. Empty things are written by hand. */
export interface TrayCard {
  readonly key: string;
  readonly label: string;
  readonly donorTree: string;
  readonly species: string;
  readonly cuttings: number;
  readonly rows: string | undefined;
  readonly place: string | undefined;
  readonly recipe: string | undefined;
  /** Once they are stuck. */
  readonly stuckOn: string | undefined;
  /** The batch, once there is one. */
  readonly batchId: string | undefined;
}

/**
 * How many go on each card: full ones first, the rest on the last.
 *
 * @param cuttings at least 0
 * @param most on a card, at least 1; nothing: all on one
 */
export function shares(cuttings: number, most: number | undefined): number[] {
  if (most === undefined || most < 1 || cuttings <= most) return cuttings > 0 ? [cuttings] : [];
  const full = Math.floor(cuttings / most);
  const rest = cuttings % most;
  return [...Array.from({ length: full }, () => most), ...(rest > 0 ? [rest] : [])];
}

/** Cards for what is not stuck yet: as many as trays or groups of rows are wanted. */
export function cardsToCome({ bundles }: TrayCards, most: number | undefined): Omit<TrayCard, 'label'>[] {
  return bundles.flatMap(({ id, donorTree, taxon, left }) =>
    shares(left, most).map((cuttings, at) => ({
      key: `${id} ${at}`, donorTree: donorTree.label, species: taxon, cuttings, rows: undefined, place: undefined, recipe: undefined, stuckOn: undefined, batchId: undefined,
    })),
  );
}

/** Cards for trays that are filled: printed anew when one has faded. */
export function cardsOfStuck({ bundles }: TrayCards): TrayCard[] {
  return bundles.flatMap(({ donorTree, taxon, stuck }) =>
    stuck.map(({ batchId, label, n, rows, place, recipe, stuckOn }) => ({
      key: batchId, label: label ?? `…${batchId.slice(-6)}`, donorTree: donorTree.label, species: taxon, cuttings: n, rows: rows ?? undefined, place, recipe: recipe ?? undefined, stuckOn, batchId,
    })),
  );
}
