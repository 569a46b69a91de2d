import type { Books, Flag, Movement } from '@sprigline/domain';
import type { KnownBatch } from '../pages/page-rows.ts';

/** The books of one batch, as the projections hold them. Keys are columns; `batch_id` is in every row. */
export interface ProjectionRows {
  readonly state: Row;
  /** In order, `seq` from 0. */
  readonly movements: readonly Row[];
  readonly stays: readonly Row[];
  readonly flags: readonly Row[];
}
export type Row = Readonly<Record<string, string | number | boolean | readonly string[] | undefined>>;

export const projectionRows = (batch: KnownBatch, books: Books): ProjectionRows => ({
  state: stateRow(batch, books),
  movements: books.movements.map((movement, seq) => movementRow(batch.id, movement, seq)),
  stays: stayRows(batch.id, books),
  flags: flagRows(batch.id, books.flags),
});

const stateRow = (batch: KnownBatch, { balance, stays, rooted, lastSeen, looks, notFound, heldBy, unconfirmed, calledOn }: Books): Row => ({
  batch_id: batch.id, balance, place_id: stays.at(-1)?.placeId ?? batch.openingPlaceId, rooted_now: rooted.now, rooted_ever: rooted.ever,
  rooted_look: rooted.look, rooted_on: rooted.seenOn, last_seen_on: lastSeen?.day, last_look: lastSeen?.look, not_found: notFound,
  held: heldBy.length > 0, held_by: heldBy, unconfirmed, called_on: calledOn, strong_look_on: looks.strongOn, sampled_on: looks.sampledOn, looked_over_on: looks.lookedOverOn,
});

const movementRow = (batchId: string, { entryId, day, effect, n, cause, toStage, undoes, lastSeen }: Movement, seq: number): Row => ({
  batch_id: batchId, seq, entry_id: entryId, day, effect, n, cause, to_stage: toStage, undoes_id: undoes, last_seen: lastSeen,
});

/** A stay ends where the next begins; the last one when nothing is left. */
function stayRows(batchId: string, { stays, balance, movements }: Books): Row[] {
  const emptyOn = balance === 0 ? movements.at(-1)?.day : undefined;
  return stays.map(({ placeId, from, entryId }, seq) => {
    const until = stays[seq + 1]?.from ?? emptyOn;
    return { batch_id: batchId, seq, place_id: placeId, from_day: from, to_day: until !== undefined && until < from ? from : until, entry_id: entryId };
  });
}

/** One row a batch, entry and code, with the plants of all that was flagged there. */
function flagRows(batchId: string, flags: readonly Flag[]): Row[] {
  const rows = new Map<string, Row>();
  for (const { entryId, code, day, n } of flags) {
    const key = `${entryId} ${code}`;
    const sum = Number(rows.get(key)?.['n'] ?? 0) + (n ?? 0);
    rows.set(key, { batch_id: batchId, entry_id: entryId, code, day, n: sum || undefined });
  }
  return [...rows.values()];
}
