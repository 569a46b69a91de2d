import { plainSpelling, tidySpelling } from './plain-spelling.ts';

/** Spellings that look like one thing, with the one used most on top. */
export interface SpellingGroup {
  /** The spelling to keep: the one used most, then the first in order. */
  readonly keep: string;
  /** Every spelling as it stands in the sheet, with how often, most first. */
  readonly spellings: readonly { readonly seen: string; readonly times: number }[];
  /** The same apart from spaces and capitals; or alike by a letter or two, which a person should look at. */
  readonly sameApartFromCase: boolean;
}

/**
 * Spellings offered for joining: those that differ in spaces and capitals only,
 * and those that differ in one letter (two in words of eight letters or more).
 * Words with different numbers or single letters are never alike: T157 and T158
 * are two trays, House A and House B two houses.
 *
 * @param seen each spelling with how often it stands in the sheet
 * @returns groups of two spellings or more; the rest need no decision
 */
export function nearSpellings(seen: ReadonlyMap<string, number>): SpellingGroup[] {
  const byPlain = groupBy([...seen.keys()].sort(), plainSpelling);
  const plains = [...byPlain.keys()].sort();
  const leaders = new Map<string, string>();
  for (const plain of plains) {
    leaders.set(plain, plains.find((earlier) => earlier < plain && leaders.get(earlier) === earlier && alike(earlier, plain)) ?? plain);
  }
  return [...groupBy(plains, (plain) => leaders.get(plain) ?? plain).values()]
    .map((group) => spellingGroup(group.flatMap((plain) => byPlain.get(plain) ?? []), seen, group.length === 1))
    .filter(({ spellings }) => spellings.length > 1);
}

function spellingGroup(spellings: readonly string[], seen: ReadonlyMap<string, number>, sameApartFromCase: boolean): SpellingGroup {
  const counted = spellings
    .map((spelling) => ({ seen: spelling, times: seen.get(spelling) ?? 0 }))
    .sort((a, b) => b.times - a.times || (a.seen < b.seen ? -1 : 1));
  return { keep: tidySpelling(counted[0]?.seen ?? ''), spellings: counted, sameApartFromCase };
}

function groupBy(items: readonly string[], key: (item: string) => string): Map<string, string[]> {
  const groups = new Map<string, string[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}

/** Numbers and single letters name things apart: tray 1 and tray 2, House A and House B. */
const namesApart = (spelling: string): string => spelling.split(/[^\p{L}\p{N}]+/u).filter((word) => word.length === 1 || /\d/.test(word)).join(' ');

function alike(a: string, b: string): boolean {
  if (namesApart(a) !== namesApart(b) || Math.min(a.length, b.length) < 4) return false;
  return distanceWithin(a, b, Math.min(a.length, b.length) >= 8 ? 2 : 1);
}

/** Whether `limit` letters put in, left out or changed make one word of the other (Levenshtein 1966). */
function distanceWithin(a: string, b: string, limit: number): boolean {
  if (Math.abs(a.length - b.length) > limit) return false;
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const here = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const changed = (above[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
      here.push(Math.min(changed, (above[column] ?? 0) + 1, (here[column - 1] ?? 0) + 1));
    }
    above = here;
  }
  return (above[b.length] ?? limit + 1) <= limit;
}
