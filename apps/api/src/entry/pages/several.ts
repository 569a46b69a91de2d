const NONE: ReadonlySet<string> = new Set();

/** For each key several ids, each once, in the order in which they were added. */
export class Several {
  readonly #sets = new Map<string, Set<string>>();

  add(key: string, id: string): void {
    const set = this.#sets.get(key);
    if (set) set.add(id);
    else this.#sets.set(key, new Set([id]));
  }

  of(key: string): ReadonlySet<string> {
    return this.#sets.get(key) ?? NONE;
  }

  delete(key: string): void {
    this.#sets.delete(key);
  }
}
