import type { BatchIdentity, Books, Entry, Flag, Movement, Stay } from '@sprigline/domain';
import { rootedNow } from './bench.ts';
import { naiveReplay } from './replay.ts';

/** Books of either witness, brought into one shape: texts in a fixed order. */
export interface Account {
  readonly balance: number;
  readonly rooted: { readonly now: number | undefined; readonly ever: number | undefined };
  readonly notFound: number;
  readonly heldBy: readonly string[];
  readonly unconfirmed: boolean;
  readonly stays: readonly string[];
  readonly lastSeenOn: string | undefined;
  readonly calledOn: string | undefined;
  readonly strongLookOn: string | undefined;
  readonly sampledOn: string | undefined;
  readonly lookedOverOn: string | undefined;
  readonly movements: readonly string[];
  readonly flags: readonly string[];
}

export function realAccount(batch: BatchIdentity, books: Books): Account {
  return {
    balance: books.balance,
    // After the tray, a plant has roots or is none: what `ever` means there is nobody's question.
    rooted: { now: books.rooted.now, ever: batch.stage === 'cutting' ? books.rooted.ever : undefined },
    notFound: books.notFound,
    heldBy: books.heldBy,
    unconfirmed: books.unconfirmed,
    stays: books.stays.map(stayAsText),
    lastSeenOn: books.lastSeen?.day,
    calledOn: books.calledOn,
    strongLookOn: books.looks.strongOn,
    sampledOn: books.looks.sampledOn,
    lookedOverOn: books.looks.lookedOverOn,
    movements: gathered(books.movements),
    flags: books.flags.map(asText).sort(),
  };
}

export function naiveAccount(batch: BatchIdentity, entries: readonly Entry[]): Account {
  const bench = naiveReplay(batch, entries);
  return {
    balance: bench.here,
    rooted: { now: rootedNow(bench), ever: batch.stage === 'cutting' ? bench.everRooted : undefined },
    notFound: Math.min(bench.notFound, bench.here),
    heldBy: bench.heldBy.map(({ id }) => id),
    unconfirmed: bench.unconfirmed,
    stays: bench.stays.map(stayAsText),
    lastSeenOn: bench.sights.at(-1)?.day,
    calledOn: bench.calledOn,
    strongLookOn: bench.strongLookOn,
    sampledOn: bench.sampledOn,
    lookedOverOn: bench.lookedOverOn,
    movements: gathered(bench.moved),
    flags: bench.flags.map(asText).sort(),
  };
}

const stayAsText = ({ placeId, from, entryId }: Stay): string => `${placeId} from ${from} by ${entryId}`;
const asText = ({ code, entryId, day, n }: Flag): string => `${code} at ${entryId} on ${day}, ${n ?? ''}`;

/** One line a kind of movement, however finely it was booked. */
function gathered(movements: readonly Movement[]): string[] {
  const sums = new Map<string, number>();
  for (const { entryId, day, effect, cause, toStage, undoes, lastSeen, n } of movements) {
    const key = JSON.stringify({ day, entryId, effect, cause, toStage, undoes, lastSeen });
    sums.set(key, (sums.get(key) ?? 0) + n);
  }
  return [...sums].map(([key, n]) => `${n} ${key}`).sort();
}

/** All that any version of an entry says of that batch, with every correction of it. */
export function everythingOn(batchId: string, entries: readonly Entry[]): Entry[] {
  const touching = entries.filter((entry) => JSON.stringify(versionOf(entry)).includes(`atchId":"${batchId}"`));
  const ids = new Set(touching.flatMap(({ id, saying }) => ('entryId' in saying ? [id, saying.entryId] : [id])));
  return entries.filter(({ id, saying }) => ids.has(id) || ('entryId' in saying && ids.has(saying.entryId)));
}

const versionOf = ({ saying }: Entry): unknown => (saying.kind === 'replaced' ? saying.instead.saying : saying);
