import { isDeepStrictEqual } from 'node:util';
import type { ChangedBooks } from '../books/book-keeper.ts';
import type { OpenPages } from '../pages/open-pages.ts';
import { partnerRows } from './partner-rows.ts';
import { projectionRows, type Row } from './projection-rows.ts';

/** Rows of the projections of one batch to write, and to delete. */
export interface Changes {
  readonly state: readonly Row[];
  readonly movements: readonly Row[];
  readonly movementsFrom: readonly Row[];
  readonly stays: readonly Row[];
  readonly staysFrom: readonly Row[];
  readonly flags: readonly Row[];
  readonly flagsGone: readonly Row[];
  readonly partners: readonly Row[];
  readonly partnersGone: readonly Row[];
}

/** A batch that is counted for the hundredth time gets one row more, not a hundred rows anew. */
export function changesOf({ batch, before, after }: ChangedBooks, pages: OpenPages): Changes {
  const now = projectionRows(batch, after);
  const was = before ? projectionRows(batch, before) : undefined;
  const partners = partnerRows(batch, after, pages);
  const partnersBefore = before ? partnerRows(batch, before, pages) : [];
  return {
    state: isDeepStrictEqual(now.state, was?.state) ? [] : [now.state],
    movements: without(now.movements, was?.movements),
    movementsFrom: beyond(batch.id, now.movements, was?.movements),
    stays: without(now.stays, was?.stays),
    staysFrom: beyond(batch.id, now.stays, was?.stays),
    flags: without(now.flags, was?.flags),
    flagsGone: gone(now.flags, was?.flags, ['entry_id', 'code']),
    partners: without(partners, partnersBefore),
    partnersGone: gone(partners, partnersBefore, ['partner_id', 'relation']),
  };
}

const textOf = (row: Row): string => JSON.stringify(row);

function without(rows: readonly Row[], written: readonly Row[] = []): Row[] {
  const there = new Set(written.map(textOf));
  return rows.filter((row) => !there.has(textOf(row)));
}

/** Where a list became shorter: all from its new length on goes. */
const beyond = (batchId: string, rows: readonly Row[], written: readonly Row[] = []): Row[] =>
  written.length > rows.length ? [{ batch_id: batchId, seq: rows.length }] : [];

function gone(rows: readonly Row[], written: readonly Row[] = [], key: readonly string[]): Row[] {
  const keyOf = (row: Row): string => key.map((name) => row[name]).join(' ');
  const there = new Set(rows.map(keyOf));
  return written.filter((row) => !there.has(keyOf(row)));
}
