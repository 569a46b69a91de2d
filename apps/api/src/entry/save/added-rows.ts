import type { Saying as Said } from '@sprigline/contract';
import type { Additions } from '../judge/additions.ts';
import type { KnownBatch, KnownSticking } from '../pages/page-rows.ts';
import type { StoredEntry } from '../stored-entry.ts';

/** What was added, as rows: keys are columns. */
export const addedRows = (additions: Additions) => ({
  entries: additions.entries.map(entryRow),
  stickings: additions.stickings.map(stickingRow),
  candidates: additions.candidates.map(({ stickingId, donorTreeId }) => ({ sticking_id: stickingId, donor_tree_id: donorTreeId })),
  batches: additions.batches.map(batchRow),
  parts: additions.parts.map(({ batchId, fromBatchId, n }) => ({ batch_id: batchId, from_batch_id: fromBatchId, n })),
  labels: additions.labels.map(({ code, batchId }) => ({ code, batch_id: batchId })),
  touches: additions.touches.map(({ batchId, entryId }) => ({ batch_id: batchId, entry_id: entryId })),
  waits: additions.waitingRows.map(({ entryId, waitsForId }) => ({ entry_id: entryId, waits_for_id: waitsForId })),
  settled: [...additions.settled].map((id) => ({ entry_id: id })),
});

const entryRow = (entry: StoredEntry) => ({
  id: entry.id, kind: entry.said.kind, observed_on: entry.observedOn, observed_minute: entry.minute, body: entry.said,
  ...correctionColumns(entry.said), ...subjectColumns(entry.said), workday_id: entry.workdayId, line: entry.line, note: entry.note,
  seen_by: entry.seenBy, written_by: entry.writtenBy, delivered_by: entry.deliveredBy, door: entry.door, written_at: entry.writtenAt,
  received_at: entry.receivedAt, received_on: entry.receivedOn, clock_offset_s: entry.clockOffsetSeconds,
  clock_unsure: entry.clockUnsure ?? false, author_unverified: entry.authorUnverified ?? false,
});

const correctionColumns = (said: Said) =>
  said.kind === 'withdrawn' || said.kind === 'replaced' ? { corrects_id: said.entryId, saw_version_id: said.sawVersion } : {};

/** What an entry is about, other than batches. Where plants went is told by the books instead. */
function subjectColumns(said: Said) {
  switch (said.kind) {
    case 'held':
    case 'released':
    case 'treated':
    case 'noted':
      return { place_id: said.placeId, donor_tree_id: said.donorTreeId, trip_id: said.tripId };
    case 'incident':
    case 'checked':
      return { place_id: said.placeId };
    default:
      return {};
  }
}

const stickingRow = (sticking: KnownSticking) => ({
  id: sticking.id, opening_entry_id: sticking.openingEntryId, donor_tree_id: sticking.donorTreeId, taxon_id: sticking.taxonId,
  bundle_id: sticking.bundleId, recipe_version_id: sticking.recipeVersionId, from_batch_id: sticking.fromBatchId,
  second_try_of_id: sticking.secondTryOfId, generation: sticking.generation, stuck_on: sticking.stuckOn,
});

const batchRow = (batch: KnownBatch) => ({
  id: batch.id, sticking_id: batch.stickingId, stage: batch.stage, parent_id: batch.parentId, opening_entry_id: batch.openingEntryId,
  opening_place_id: batch.openingPlaceId, opened_on: batch.openedOn, rows: batch.rows, container: batch.container, medium: batch.medium,
});
