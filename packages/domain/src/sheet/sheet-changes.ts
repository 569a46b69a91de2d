import type { SheetFact } from './sheet.ts';

/** A row of an earlier import, with the entry that it became. */
export interface EarlierRow {
  readonly entryId: string;
  readonly fact: Omit<SheetFact, 'row'>;
}

export interface SheetChanges {
  /** Rows that are new. */
  readonly added: readonly SheetFact[];
  /** Rows that stand in the books as they are, each with its entry. */
  readonly same: readonly { readonly fact: SheetFact; readonly entryId: string }[];
  /** Rows that seem to be earlier ones with another day, number or cause. */
  readonly changed: readonly { readonly fact: SheetFact; readonly earlier: EarlierRow }[];
  /** Earlier rows that the sheet has no more. */
  readonly gone: readonly EarlierRow[];
}

/**
 * What is new in a sheet that has been imported before.
 *
 * A sheet's rows have no names, so a changed row is one that is new while an
 * earlier row of the same act on the same labels has gone: first on the same
 * day (another number), then with the same number (another day). A row whose
 * partner is not clear, since several would do, counts as added.
 */
export function sheetChanges(facts: readonly SheetFact[], earlier: readonly EarlierRow[]): SheetChanges {
  const waiting = bucket(earlier, ({ fact }) => contentOf(fact));
  const same: { fact: SheetFact; entryId: string }[] = [];
  const unmatched: SheetFact[] = [];
  for (const fact of facts) {
    const match = waiting.get(contentOf(fact))?.shift();
    if (match) same.push({ fact, entryId: match.entryId });
    else unmatched.push(fact);
  }
  const left = [...waiting.values()].flat();
  const byDay = pairUp(unmatched, left, (fact) => `${sameThing(fact)}|${fact.day}`);
  const byNumber = pairUp(byDay.facts, byDay.earlier, (fact) => `${sameThing(fact)}|${fact.n}|${fact.rooted ?? ''}`);
  return { same, changed: [...byDay.pairs, ...byNumber.pairs], added: byNumber.facts, gone: byNumber.earlier };
}

/** Everything a row says, apart from where it stands. */
export const contentOf = (fact: Omit<SheetFact, 'row'>): string =>
  JSON.stringify([
    fact.act, fact.day, fact.label, fact.n, fact.rooted ?? null, fact.toLabel ?? null, fact.donor ?? null, fact.stand ?? null,
    fact.species ?? null, fact.place ?? null, fact.recipe ?? null, fact.cause ?? null, fact.notes ?? null,
  ]);

const sameThing = (fact: Omit<SheetFact, 'row'>): string => `${fact.act}|${fact.label}|${fact.toLabel ?? ''}`;

function pairUp(facts: readonly SheetFact[], earlier: readonly EarlierRow[], key: (fact: Omit<SheetFact, 'row'>) => string) {
  const news = bucket(facts, key);
  const olds = bucket(earlier, ({ fact }) => key(fact));
  const pairs: { fact: SheetFact; earlier: EarlierRow }[] = [];
  for (const [name, [fact, ...moreFacts]] of news) {
    const [old, ...moreOld] = olds.get(name) ?? [];
    if (fact && old && moreFacts.length === 0 && moreOld.length === 0) pairs.push({ fact, earlier: old });
  }
  const paired = new Set<unknown>(pairs.flatMap((pair) => [pair.fact, pair.earlier]));
  return { pairs, facts: facts.filter((fact) => !paired.has(fact)), earlier: earlier.filter((row) => !paired.has(row)) };
}

function bucket<T>(items: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const buckets = new Map<string, T[]>();
  for (const item of items) {
    const there = buckets.get(key(item));
    if (there) there.push(item);
    else buckets.set(key(item), [item]);
  }
  return buckets;
}
