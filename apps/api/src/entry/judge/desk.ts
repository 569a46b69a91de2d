import type { Discrepancy as Shown } from '@sprigline/contract';
import { type BatchIdentity, type Books, DomainError, deskVerdict, type DeskVerdict, replay } from '@sprigline/domain';
import type { BookKeeper } from '../books/book-keeper.ts';
import type { OpenPages } from '../pages/open-pages.ts';
import type { KnownBatch } from '../pages/page-rows.ts';
import { rootIdOf, type StoredEntry } from '../stored-entry.ts';

/** A refusal at the desk, with what does not add up. */
export class DeskRefusal extends DomainError {
  readonly discrepancies: readonly Shown[];

  constructor(code: string, message: string, discrepancies: readonly Shown[]) {
    const first = discrepancies[0];
    super(code, message, first ? { there: first.there, ...(first.n === undefined ? {} : { n: first.n }) } : {});
    this.discrepancies = discrepancies;
  }
}

/**
 * A person stands there and can be asked: what cannot be is not taken, and what
 * looks like a slip is asked about.
 *
 * @param batches those that the entry says something of, with the one it opens
 * @throws DeskRefusal `batch/held`, `entry/needs-another-look`, and, unless confirmed,
 *   `entry/looks-wrong` and `entry/breaks-later-ones`
 * @returns the books of each of them with the entry in it
 */
export function refuseAtDesk(entry: StoredEntry, batches: readonly KnownBatch[], pages: OpenPages, keeper: BookKeeper, isConfirmed: boolean): ReadonlyMap<string, Books> {
  const root = rootIdOf(entry);
  const own = new Set([entry.id, root]);
  const verdicts = batches.map((batch) => {
    const before = pages.batches.has(batch.id) ? keeper.now(batch.id) : replay(batch satisfies BatchIdentity, []);
    const target = root === entry.id || pages.batchesOf(root).has(batch.id) ? [] : linesOf(root, pages);
    const after = keeper.with(batch, [...target, entry]);
    return { batchId: batch.id, after, ...deskVerdict(before, after, own) };
  });
  const refused = found('refused', verdicts);
  if (refused.some(({ code }) => code === 'held-moved')) {
    throw new DeskRefusal('batch/held', 'these plants are held: release them first, or leave them where they are', refused);
  }
  if (refused.length > 0) throw new DeskRefusal('entry/needs-another-look', 'count again, or look at what was written before', refused);

  const asked = found('asked', verdicts);
  if (asked.length === 0 || isConfirmed) return new Map(verdicts.map(({ batchId, after }) => [batchId, after]));
  if (asked.some(({ entryId }) => !own.has(entryId))) {
    throw new DeskRefusal('entry/breaks-later-ones', 'look at the later entries listed, or write it all the same', asked);
  }
  throw new DeskRefusal('entry/looks-wrong', 'look again, or write it all the same', asked);
}

/** A correction may bring an entry to a batch that never heard of it: with all that was said of it before. */
const linesOf = (root: string, pages: OpenPages): StoredEntry[] => [
  ...[pages.entries.get(root) ?? []].flat(),
  ...pages.correctionsOf(root),
];

const found = (verdict: DeskVerdict['verdict'], verdicts: readonly (DeskVerdict & { batchId: string })[]): Shown[] =>
  verdicts.filter((each) => each.verdict === verdict).flatMap(({ batchId, discrepancies }) => discrepancies.map((each) => ({ ...each, batchId })));
