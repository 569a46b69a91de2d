/** What a scanner that types like a keyboard has sent so far. */
export interface Wedge {
  readonly keys: string;
  /** When the first and the last key came, in ms of any clock that runs evenly. */
  readonly firstMs: number;
  readonly lastMs: number;
}

export const NO_KEYS: Wedge = { keys: '', firstMs: 0, lastMs: 0 };

/** Fewer keys than any label of a roll has are a person’s, such as two figures of a round. */
const FEWEST = 4;
/** Longer between two keys is a pause, and what came before was not the beginning. */
const PAUSE_MS = 120;
/**
 * Scanners send a key every 2 to 30 ms. Whoever types fast needs 80 ms and more. On average, since one key in a
 * burst may be late where the machine is busy.
 */
const MOST_PER_KEY_MS = 45;
/** An address and a label in it, with room. */
const MOST_KEYS = 300;

/**
 * Takes one more key.
 *
 * @param key as the browser names it: one sign, `Enter`, `Tab`, or the name of another key
 * @param atMs when it came
 * @returns what is kept, and the code once a burst was ended by Enter or Tab
 */
export function wedgeKey(before: Wedge, key: string, atMs: number): { readonly wedge: Wedge; readonly code?: string } {
  const isNew = before.keys === '' || atMs - before.lastMs > PAUSE_MS;
  if (key === 'Enter' || key === 'Tab') return isNew || !isBurst(before, atMs) ? { wedge: NO_KEYS } : { wedge: NO_KEYS, code: before.keys };
  // Shift comes before each capital and is none.
  if (key === 'Shift' || key === 'CapsLock') return { wedge: before };
  if ([...key].length !== 1) return { wedge: NO_KEYS };
  if (isNew) return { wedge: { keys: key, firstMs: atMs, lastMs: atMs } };
  return before.keys.length >= MOST_KEYS ? { wedge: NO_KEYS } : { wedge: { ...before, keys: before.keys + key, lastMs: atMs } };
}

/** Whether the last sign came so soon after the first that only a machine can have sent them. The key that ends them counts too. */
function isBurst({ keys, firstMs }: Wedge, atMs: number): boolean {
  return keys.length >= FEWEST && (atMs - firstMs) / keys.length <= MOST_PER_KEY_MS;
}
