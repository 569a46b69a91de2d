import type { ImportPlan, NewEntry, PlainSaying } from '@sprigline/contract';
import { contentOf, labelOf, plainSpelling, type SheetFact } from '@sprigline/domain';
import { contentId } from '../entry/entry.module.ts';
import type { KnownNames } from './known.queries.ts';
import { placeKey } from './sheet-records.ts';

/** A row of a sheet as the entry that it becomes. */
export interface SheetEntry {
  readonly fact: SheetFact;
  readonly entry: NewEntry;
}

/**
 * Openings come before what is said of them, stage by stage; then batch by batch, so that a batch's
 * books are worked out once or twice, not at every row. The books themselves follow the days, not this order.
 */
const OPENING_ORDER = { stuck: 0, lifted: 1, potted: 2, planted: 3 } as const;

/**
 * The entries of a sheet's rows. Ids are made from the programme, what the row
 * says and its occurrence among equal rows, so the same row is the same entry.
 *
 * @param facts every row of the sheet, also those that are in the books: they count as occurrences
 * @param wanted the rows to make entries of
 */
export function entriesOfSheet(
  programmeId: string, facts: readonly SheetFact[], wanted: ReadonlySet<SheetFact>, plan: ImportPlan, known: KnownNames, writtenAt: string,
): SheetEntry[] {
  const occurrences = new Map<string, number>();
  const entries: SheetEntry[] = [];
  for (const fact of facts) {
    const content = contentOf(fact);
    const occurrence = occurrences.get(content) ?? 0;
    occurrences.set(content, occurrence + 1);
    if (!wanted.has(fact)) continue;
    const id = contentId(programmeId, 'entry', content, occurrence);
    entries.push({ fact, entry: { id, observedOn: fact.day, writtenAt, ...(fact.notes && { note: fact.notes }), saying: sayingOf(fact, programmeId, plan, known) } });
  }
  return entries.sort((a, b) => openingRank(a.fact) - openingRank(b.fact) || byLabel(a.fact, b.fact) || a.fact.row - b.fact.row);
}

const byLabel = (a: SheetFact, b: SheetFact): number => (a.label < b.label ? -1 : a.label > b.label ? 1 : 0);

const openingRank = (fact: SheetFact): number => (OPENING_ORDER as Partial<Record<string, number>>)[fact.act] ?? 4;

/** What a row says, in the words of the ledger. */
export function sayingOf(fact: SheetFact, programmeId: string, plan: ImportPlan, known: KnownNames): PlainSaying {
  const { act, n } = fact;
  const batchId = batchOf(fact.label, programmeId, known);
  const placeId = known.places.get(placeKey(fact.place ?? '')) ?? '';
  switch (act) {
    case 'stuck':
      return {
        kind: act, batchId, n, placeId, label: fact.label, damaged: [],
        stickingId: contentId(programmeId, 'sticking', fact.label),
        donorTreeId: known.donors.get(plainSpelling(fact.donor ?? ''))?.id,
        ...(fact.recipe && { recipeVersionId: known.recipes.get(plainSpelling(fact.recipe)) }),
      };
    case 'counted': {
      const look = fact.rooted === undefined ? plan.looks.withoutRoots : plan.looks.withRoots;
      return { kind: act, batchId, alive: n, look, dead: [], ...(fact.rooted !== undefined && { rooted: fact.rooted }) };
    }
    case 'died':
      return { kind: act, batchId, n, cause: fact.cause ?? 'unknown', certainty: (fact.cause ?? 'unknown') === 'unknown' ? 'unknown' : 'seen' };
    case 'thrownOut':
      return { kind: act, batchId, n, reason: fact.cause ?? 'not told' };
    case 'called':
      return { kind: act, batchId, n };
    case 'found':
      return { kind: act, batchId, n, reason: fact.cause ?? fact.notes ?? 'not told' };
    case 'givenOut':
      return { kind: act, batchId, n, outside: (fact.notes ?? fact.place ?? 'not told').slice(0, 200) };
    case 'lifted':
    case 'potted':
    case 'planted':
      return { kind: act, batchId, n, placeId, toBatchId: batchOf(fact.toLabel ?? '', programmeId, known), ...newLabel(fact, known) };
    case 'moved':
      return fact.toLabel
        ? { kind: act, batchId, placeId, n, toBatchId: batchOf(fact.toLabel, programmeId, known), ...newLabel(fact, known) }
        : { kind: act, batchId, placeId };
  }
}

const batchOf = (label: string, programmeId: string, known: KnownNames): string =>
  known.batches.get(labelOf(label))?.id ?? contentId(programmeId, 'batch', labelOf(label));

/** A label is given with the entry that opens its batch; a second entry into that batch only joins it. */
const newLabel = (fact: SheetFact, known: KnownNames) =>
  fact.toLabel && !known.batches.has(fact.toLabel) ? { label: fact.toLabel } : {};
