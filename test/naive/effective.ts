import type { Entry, Flag, Replaced, Withdrawn } from '@sprigline/domain';
import { before, standing } from './order.ts';

interface Correction extends Entry {
  readonly saying: Withdrawn | Replaced;
}

const isCorrection = (entry: Entry): entry is Correction =>
  entry.saying.kind === 'withdrawn' || entry.saying.kind === 'replaced';

const flag = (code: Flag['code'], entry: Entry): Flag => ({ code, entryId: entry.id, day: entry.observedOn });

/** Of everything ever said, what still stands, and what the review list should show of the rest. */
export function whatStands(said: readonly Entry[]): { entries: Entry[]; flags: Flag[] } {
  const once = [...new Map(said.map((entry) => [entry.id, entry])).values()];
  const unverified = once.filter((entry) => entry.authorUnverified === true);
  const verified = once.filter((entry) => entry.authorUnverified !== true);
  const corrections = verified.filter(isCorrection);

  const flags = unverified.filter(isCorrection).map((entry) => flag('author-unverified', entry));
  for (const correction of corrections) {
    if (!targetIsHere(correction, once)) flags.push(flag('waiting', correction));
  }

  const entries: Entry[] = [];
  for (const entry of once.filter((one) => !isCorrection(one))) {
    const ofThis = corrections.filter((one) => one.saying.entryId === entry.id && targetIsHere(one, once));
    const { now, rivals } = follow(entry, ofThis);
    if (now?.authorUnverified === true) flags.push(flag('author-unverified', now));
    else if (now !== undefined) entries.push(now);
    flags.push(...rivals.map((rival) => flag('rival-correction', rival)));
  }
  return { entries, flags };
}

/** The entry is known, and so are all versions (of known authors) from it to the one which the correction saw. */
function targetIsHere({ saying }: Correction, once: readonly Entry[]): boolean {
  const { entryId } = saying;
  const known = new Set(once.filter((one) => one.id === entryId && !isCorrection(one)).map(({ id }) => id));
  const ofThis = once.filter(isCorrection).filter((one) => one.saying.entryId === entryId && one.authorUnverified !== true);
  // As often as there are corrections: each pass may make the next one known.
  for (const _ of ofThis) for (const one of ofThis) if (known.has(one.saying.sawVersion)) known.add(one.id);
  return known.has(saying.sawVersion);
}

/** Walks the chain of versions; what is not on it is a rival. */
function follow(entry: Entry, corrections: readonly Correction[]): { now: Entry | undefined; rivals: Correction[] } {
  const chain: Correction[] = [];
  let version = entry.id;
  for (;;) {
    const next = corrections
      .filter(({ saying }) => saying.sawVersion === version)
      .filter((one) => !chain.includes(one))
      .sort((a, b) => before(standing(a, 3), standing(b, 3)))[0];
    if (next === undefined) break;
    chain.push(next);
    version = next.id;
  }
  const rivals = corrections.filter((one) => !chain.includes(one));
  const last = chain.at(-1)?.saying;
  if (last === undefined) return { now: entry, rivals };
  return { now: last.kind === 'withdrawn' ? undefined : { ...entry, ...toldBy(last) }, rivals };
}

/** The day and the minute go with what is said, also when no minute is told any more. */
const toldBy = ({ instead }: Replaced): Pick<Entry, 'observedOn' | 'minute' | 'saying'> => ({
  observedOn: instead.observedOn,
  minute: instead.minute,
  saying: instead.saying,
});
