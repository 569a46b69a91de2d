/** One of many to choose from. */
export interface Choosable {
  readonly id: string;
  readonly name: string;
  /** What tells it apart, in small letters beside it. */
  readonly within: string;
}

export interface Narrowed {
  readonly shown: readonly Choosable[];
  /** So many more fit what was typed. */
  readonly more: number;
}

/** A list that is longer is narrowed by typing. */
const MOST = 8;

/**
 * The first few of a long list: the chosen one, those used last, then in their own order; narrowed by what was typed, word by
 * word, in any order.
 *
 * @param last ids, newest first
 * @param chosen always among them, so that it can be seen
 */
export function narrowed(all: readonly Choosable[], typed: string, last: readonly string[], chosen: string | undefined): Narrowed {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const rank = (id: string): number => (id === chosen ? -1 : last.includes(id) ? last.indexOf(id) : last.length);
  const fitting = all
    .filter(({ id, name, within }) => id === chosen || words.every((word) => `${within} ${name}`.toLowerCase().includes(word)))
    .toSorted((one, other) => rank(one.id) - rank(other.id));
  return { shown: fitting.slice(0, MOST), more: Math.max(0, fitting.length - MOST) };
}
