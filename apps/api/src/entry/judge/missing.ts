import { touchedBatches } from '@sprigline/domain';
import type { OpenPages } from '../pages/open-pages.ts';
import { saidInTheEnd, type StoredEntry } from '../stored-entry.ts';

/** Ids that an entry names and nobody has told of yet. What it opens itself is not missing. */
export function missingFor(entry: StoredEntry, pages: OpenPages): string[] {
  return [...missingEntries(entry, pages), ...missingBatches(entry, pages)];
}

export function missingEntries({ said }: StoredEntry, pages: OpenPages): string[] {
  if (said.kind !== 'withdrawn' && said.kind !== 'replaced') return [];

  const target = pages.entries.get(said.entryId);
  if (!target) return [said.entryId];
  const versions = [target, ...pages.correctionsOf(target.id)];
  return versions.some(({ id }) => id === said.sawVersion) ? [] : [said.sawVersion];
}

function missingBatches(entry: StoredEntry, pages: OpenPages): string[] {
  const said = saidInTheEnd(entry);
  if (!said) return [];

  const named = touchedBatches(entry.saying);
  const opened = openedBy(said);
  const missing = named.filter((id) => id !== opened && !pages.batches.has(id));
  if (said.kind === 'stuck' && said.fromBatchId !== undefined && !pages.batches.has(said.fromBatchId)) missing.push(said.fromBatchId);
  if (said.kind === 'identified' && !pages.stickings.has(said.stickingId)) missing.push(said.stickingId);
  return missing;
}

/** The batch that plants go into, which is opened if it is not there yet. */
export function openedBy(said: NonNullable<ReturnType<typeof saidInTheEnd>>): string | undefined {
  if (said.kind === 'stuck' || said.kind === 'received') return said.batchId;
  return 'toBatchId' in said ? said.toBatchId : undefined;
}
