import type { NewEntry, Saying as Said } from '@sprigline/contract';
import { keptLabel, touchedBatches } from '@sprigline/domain';
import { asSaying, saidInTheEnd } from './stored-entry.ts';

/** Everything that entries point to, so that it can be locked and read at once. */
export interface Named {
  /** Entries, batches and stickings: what the ledger itself knows. */
  readonly ledger: Set<string>;
  /** Places, bundles, donor trees, recipes and whatever else has a record of its own. */
  readonly records: Set<string>;
  readonly labels: Set<string>;
}

/** Where an entry names a record: the property, and the table that the record stands in. */
export const RECORD_NAMES = {
  placeId: 'place',
  bundleId: 'bundle',
  donorTreeId: 'donor_tree',
  tripId: 'trip',
  recipeVersionId: 'recipe_version',
  partnerId: 'partner',
  taxonId: 'taxon',
} as const;
export type RecordTable = (typeof RECORD_NAMES)[keyof typeof RECORD_NAMES] | 'person' | 'workday';

type Pointing = Pick<NewEntry, 'id' | 'seenBy' | 'writtenBy' | 'workdayId'> & { readonly said: Said };

export function namedBy(entries: Iterable<Pointing>): Named {
  const named: Named = { ledger: new Set(), records: new Set(), labels: new Set() };
  for (const entry of entries) {
    for (const id of ledgerIdsOf(entry)) named.ledger.add(id);
    for (const { id } of recordsOf(entry)) named.records.add(id);
    const said = saidInTheEnd(entry);
    if (said && 'label' in said && said.label !== undefined) named.labels.add(keptLabel(said.label));
  }
  return named;
}

function ledgerIdsOf({ id, said }: Pointing): string[] {
  const ids = [id, ...touchedBatches(asSaying(said))];
  if (said.kind === 'withdrawn' || said.kind === 'replaced') ids.push(said.entryId, said.sawVersion);
  const end = saidInTheEnd({ said });
  if (end && 'stickingId' in end) ids.push(end.stickingId);
  if (end?.kind === 'stuck' && end.fromBatchId !== undefined) ids.push(end.fromBatchId);
  return ids;
}

/** Each record that an entry names, with the property that names it. */
export function recordsOf(entry: Pointing): { table: RecordTable; id: string; as: string }[] {
  const said: Record<string, unknown> = saidInTheEnd(entry) ?? {};
  const records: { table: RecordTable; id: string; as: string }[] = [];
  for (const [as, table] of Object.entries(RECORD_NAMES)) {
    const id = said[as];
    if (typeof id === 'string') records.push({ table, id, as });
  }
  const candidates = Array.isArray(said['candidates']) ? (said['candidates'] as string[]) : [];
  records.push(...candidates.map((id) => ({ table: 'donor_tree' as const, id, as: 'candidates' })));
  if (entry.seenBy !== undefined) records.push({ table: 'person', id: entry.seenBy, as: 'seenBy' });
  if (entry.writtenBy !== undefined) records.push({ table: 'person', id: entry.writtenBy, as: 'writtenBy' });
  if (entry.workdayId !== undefined) records.push({ table: 'workday', id: entry.workdayId, as: 'workdayId' });
  return records;
}
