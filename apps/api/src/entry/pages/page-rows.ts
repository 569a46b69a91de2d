import type { Saying as Said } from '@sprigline/contract';
import type { Door, Stage } from '@sprigline/domain';
import { asSaying, type StoredEntry } from '../stored-entry.ts';

/** A row of the table entry, as JSON tells it. */
export interface EntryRow {
  readonly id: string;
  readonly observed_on: string;
  readonly observed_minute: number | null;
  readonly body: Said;
  readonly workday_id: string | null;
  readonly line: number | null;
  readonly note: string | null;
  readonly seen_by: string | null;
  readonly written_by: string | null;
  readonly delivered_by: string;
  readonly door: Door;
  readonly written_at: string;
  readonly received_at: string;
  readonly received_on: string;
  readonly clock_offset_s: number | null;
  readonly clock_unsure: boolean;
  readonly author_unverified: boolean;
}

export const ENTRY_COLUMNS =
  'e.id, e.observed_on, e.observed_minute, e.body, e.workday_id, e.line, e.note, e.seen_by, e.written_by, e.delivered_by, ' +
  'e.door, e.written_at, e.received_at, e.received_on, e.clock_offset_s, e.clock_unsure, e.author_unverified';

export const entryOfRow = (row: EntryRow): StoredEntry => ({
  id: row.id,
  observedOn: row.observed_on,
  minute: row.observed_minute ?? undefined,
  workdayId: row.workday_id ?? undefined,
  line: row.line ?? undefined,
  note: row.note ?? undefined,
  receivedOn: row.received_on,
  door: row.door,
  clockUnsure: row.clock_unsure,
  authorUnverified: row.author_unverified,
  saying: asSaying(row.body),
  said: row.body,
  seenBy: row.seen_by ?? undefined,
  writtenBy: row.written_by ?? undefined,
  deliveredBy: row.delivered_by,
  writtenAt: row.written_at,
  receivedAt: row.received_at,
  clockOffsetSeconds: row.clock_offset_s ?? undefined,
});

/** A batch: what is fixed from its opening on, and on which partners' land its donor trees stand. */
export interface KnownBatch {
  readonly id: string;
  readonly stickingId?: string | undefined;
  readonly stage: Stage;
  readonly parentId?: string | undefined;
  readonly openingEntryId: string;
  readonly openingPlaceId: string;
  readonly openedOn: string;
  readonly rows?: string | undefined;
  readonly container?: string | undefined;
  readonly medium?: string | undefined;
  readonly standPartners: readonly string[];
}

export interface KnownSticking {
  readonly id: string;
  readonly openingEntryId: string;
  readonly donorTreeId?: string | undefined;
  readonly taxonId: string;
  readonly bundleId?: string | undefined;
  readonly recipeVersionId?: string | undefined;
  readonly fromBatchId?: string | undefined;
  readonly secondTryOfId?: string | undefined;
  readonly generation: number;
  readonly stuckOn?: string | undefined;
  readonly standPartners: readonly string[];
}

/** A record that entries may name. Which of the fields it has depends on the table. */
export interface KnownRecord {
  readonly table: string;
  readonly id: string;
  /** Of a bundle. */
  readonly donor_tree_id?: string;
  /** Of a donor tree. */
  readonly taxon_id?: string;
  /** Of a donor tree: whose land its stand is on. Of a place: who holds it, or what it lies in. */
  readonly partner_id?: string;
  /** Of a place with a partner: the kind of the place that the partner holds. */
  readonly held_kind?: string;
  /** Of a person: they work here no longer. */
  readonly gone?: boolean;
  /** Of a person: they answer for the stock. */
  readonly desk?: boolean;
}
