import type { Flag } from './books.ts';
import { contentOrder } from './content-order.ts';
import type { Entry, Replaced, Withdrawn } from './entry.ts';
import { flagOf } from './flag.ts';
import { touchedBatches } from './touched-batches.ts';

type Correction = Entry & { readonly saying: Withdrawn | Replaced };

export interface EffectiveEntries {
  /** What stands in the books: each entry under its own id, saying what its last correction says; in content order. */
  readonly effective: readonly Entry[];
  /** `rival-correction`: corrections of a version that somebody else had corrected, and what hangs on them. */
  readonly rivals: readonly Flag[];
  /** `author-unverified`: kept for review, out of the books. */
  readonly unverified: readonly Flag[];
  /** `waiting`: corrections of an entry or a version that has not arrived. */
  readonly waiting: readonly Flag[];
}

/**
 * Applies the chains of corrections to everything that was ever said.
 *
 * Each correction names the version it saw. Of several that saw the same one,
 * the first in content order stands; the others are kept and flagged, since
 * their writers did not know of each other. A replacement that saw a
 * withdrawal brings its entry back.
 *
 * @param entries in any order; one sent twice counts once
 */
export function effectiveEntries(entries: readonly Entry[]): EffectiveEntries {
  const all = distinct(entries);
  const corrections = all.filter(isCorrection);
  const followers = followersOf(corrections.filter(isVerified));

  const chains = all.filter((entry) => !isCorrection(entry)).map((entry) => chainOf(entry, followers));
  const standing = chains.flatMap(({ now }) => now ?? []);
  const rivals = chains.flatMap((chain) => chain.rivals);
  const reached = new Set([...chains.flatMap(({ line }) => line), ...rivals]);
  const waiting = corrections.filter((correction) => isVerified(correction) && !reached.has(correction));

  return {
    effective: standing.filter(isVerified),
    rivals: rivals.map((entry) => flagOf(entry, 'rival-correction')),
    unverified: [...standing, ...corrections]
      .filter((entry) => !isVerified(entry))
      .map((entry) => flagOf(entry, 'author-unverified')),
    waiting: waiting.map((entry) => flagOf(entry, 'waiting')),
  };
}

/** What concerns one batch: entries that name it in any of their versions, with all their corrections. */
export function entriesAbout(batchId: string, entries: readonly Entry[]): Entry[] {
  const concerned = new Set(
    entries.filter(({ saying }) => touchedBatches(saying).includes(batchId)).map((entry) => chainId(entry)),
  );
  return entries.filter((entry) => concerned.has(chainId(entry)));
}

interface Chain {
  /** What the entry says after its corrections; nothing once it is withdrawn. */
  readonly now: Entry | undefined;
  readonly line: readonly Correction[];
  readonly rivals: readonly Correction[];
}

/** Corrections that saw one version of one entry, the effective one first. */
type Followers = (entryId: string, version: string) => readonly Correction[];

function chainOf(entry: Entry, followers: Followers): Chain {
  const line: Correction[] = [];
  const rivals: Correction[] = [];
  let now: Entry | undefined = entry;
  for (let version: string | undefined = entry.id; version !== undefined; ) {
    const [next, ...others] = followers(entry.id, version);
    rivals.push(...others.flatMap((rival) => withWhatFollows(rival, followers)));
    if (next) {
      line.push(next);
      now = correctedBy(entry, next);
    }
    version = next?.id;
  }
  return { now, line, rivals };
}

function withWhatFollows(rival: Correction, followers: Followers): Correction[] {
  const next = followers(rival.saying.entryId, rival.id);
  return [rival, ...next.flatMap((follower) => withWhatFollows(follower, followers))];
}

/** The entry keeps its id, its place on the workday and its day of receipt; it only says something else. */
function correctedBy(entry: Entry, { saying }: Correction): Entry | undefined {
  if (saying.kind === 'withdrawn') return undefined;

  const { observedOn, minute, saying: instead } = saying.instead;
  return { ...entry, observedOn, minute, saying: instead };
}

function followersOf(corrections: readonly Correction[]): Followers {
  const byVersion = new Map<string, Correction[]>();
  for (const correction of corrections.toSorted(contentOrder)) {
    const { sawVersion } = correction.saying;
    byVersion.set(sawVersion, [...(byVersion.get(sawVersion) ?? []), correction]);
  }
  return (entryId, version) => (byVersion.get(version) ?? []).filter(({ saying }) => saying.entryId === entryId);
}

const distinct = (entries: readonly Entry[]): Entry[] =>
  [...new Map(entries.map((entry) => [entry.id, entry])).values()].sort(contentOrder);

const chainId = (entry: Entry): string => (isCorrection(entry) ? entry.saying.entryId : entry.id);

const isCorrection = (entry: Entry): entry is Correction =>
  entry.saying.kind === 'withdrawn' || entry.saying.kind === 'replaced';

const isVerified = (entry: Entry): boolean => !entry.authorUnverified;
