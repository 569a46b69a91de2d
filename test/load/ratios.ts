import { expect } from 'vitest';
import type { TestApi } from '../support/api.ts';

const TIMES = 7;
/** What takes so long is asked less often. */
const LONG_MS = 2_000;

/** The middle of several times, in milliseconds. */
export async function middle(work: () => Promise<void>): Promise<number> {
  const times: number[] = [];
  while (times.length < TIMES && !(times.length >= 3 && (times.at(-1) ?? 0) > LONG_MS)) {
    const begin = performance.now();
    await work();
    times.push(performance.now() - begin);
  }
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
}

/** The middle time of a reading. */
export const timeOf = ({ app }: TestApi, headers: Record<string, string>, url: string): Promise<number> =>
  middle(async () => {
    const { statusCode, body } = await app.inject({ url, headers });
    expect(statusCode, body.slice(0, 300)).toBe(200);
  });

/** Prints times as multiples of the first. */
export function printRatios(title: string, rows: readonly (readonly [what: string, ms: number])[]): void {
  const first = rows[0]?.[1] ?? 1;
  console.log([title, ...rows.map(([what, ms]) => `  ${what.padEnd(44)} ${ms.toFixed(1).padStart(9)} ms ${(ms / first).toFixed(1).padStart(7)}x`)].join('\n'));
}
