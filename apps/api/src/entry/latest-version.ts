import type { StoredEntry } from './stored-entry.ts';

/** The end of an entry's chain of corrections, each of which names the version that it saw: what the next one has to name. */
export function latestVersionOf(entry: StoredEntry, corrections: readonly StoredEntry[]): string {
  const next = new Map(corrections.flatMap(({ id, said }) => ('sawVersion' in said ? [[said.sawVersion, id] as const] : [])));
  let version = entry.id;
  for (let after = next.get(version); after !== undefined; after = next.get(version)) version = after;
  return version;
}
