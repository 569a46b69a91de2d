/** A code in a picture, and where its middle is: 0 to 1 from the left and from the top. */
export interface CodeSeen {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** Of several labels in the picture the one that is aimed at. */
export function nearestToMiddle(seen: readonly CodeSeen[]): string | undefined {
  const away = ({ x, y }: CodeSeen): number => Math.hypot(x - 0.5, y - 0.5);
  return [...seen].sort((a, b) => away(a) - away(b))[0]?.text;
}

/** What was read last, and when it was last in the picture. */
export interface LastSeen {
  readonly text: string;
  readonly atMs: number;
}

/** A code has to be out of the picture for so long before it is read again. */
const GONE_MS = 2_000;

/** Whether a code is read anew, and not the same label that is still being held. */
export function isSeenAnew(last: LastSeen | undefined, text: string, atMs: number): boolean {
  return last === undefined || last.text !== text || atMs - last.atMs > GONE_MS;
}
