import { expect } from 'vitest';
import type { TestApi } from '../support/api.ts';

const TIMES = 7;
/** What takes so long is asked less often. */
const LONG_MS = 2_000;

/** The middle of several times, in milliseconds. */
export async function middle(work: () => Promise<void>): Promise<number> {
  const times: number[] = [];
  while (times.length < TIMES && !(times.length >= 3 && (times.at(-1) ?? 0) > LONG_MS)) times.push(await msOf(work));
  return middleOf(times);
}

export interface Measured {
  readonly what: string;
  readonly ms: number;
  /** What the cheapest took at the same time. */
  readonly base: number;
}

/** Both in turn, so that whatever else the machine does falls on both alike. */
export async function besides(what: string, base: () => Promise<void>, work: () => Promise<void>): Promise<Measured> {
  const [times, bases]: [number[], number[]] = [[], []];
  while (times.length < TIMES && !(times.length >= 3 && (times.at(-1) ?? 0) > LONG_MS)) {
    bases.push(await msOf(base));
    times.push(await msOf(work));
  }
  return { what, ms: middleOf(times), base: middleOf(bases) };
}

/** Megabytes that an answer holds while it is kept. */
export function heapMb(work: () => unknown): number {
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  const kept = work();
  globalThis.gc?.();
  const after = process.memoryUsage().heapUsed;
  return kept === undefined ? 0 : (after - before) / 1e6;
}

/** Asks the API, which must answer. */
export const asking = ({ app }: TestApi, headers: Record<string, string>, url: string) => async (): Promise<void> => {
  const { statusCode, body } = await app.inject({ url, headers });
  expect(statusCode, body.slice(0, 300)).toBe(200);
};

/** Prints times as multiples of what stood beside them. */
export function printRatios(title: string, rows: readonly Measured[]): void {
  const line = ({ what, ms, base }: Measured): string => `  ${what.padEnd(44)} ${ms.toFixed(1).padStart(9)} ms ${(ms / base).toFixed(1).padStart(7)}x of ${base.toFixed(1)} ms`;
  console.log([title, ...rows.map(line)].join('\n'));
}

async function msOf(work: () => Promise<void>): Promise<number> {
  const begin = performance.now();
  await work();
  return performance.now() - begin;
}

export const middleOf = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
