/** What ids of a filled programme begin with, so that one row can name another without a look-up. */
export const KINDS = {
  stand: 1, donor: 2, sticking: 3, batch: 4, mixed: 5, opening: 6, count: 7, death: 8, mixing: 9, place: 10, bundle: 11, trip: 12, filling: 13, taxon: 14,
} as const;

/** SQL for the id of the row at a whole number. */
export const idAt = (kind: keyof typeof KINDS, at: string): string =>
  `('019000${KINDS[kind].toString(16).padStart(2, '0')}-0000-7000-8000-' || lpad(to_hex(${at}), 12, '0'))::uuid`;

/** The same for a number known here. */
export const idOf = (kind: keyof typeof KINDS, at: number): string =>
  `019000${KINDS[kind].toString(16).padStart(2, '0')}-0000-7000-8000-${at.toString(16).padStart(12, '0')}`;
