import { describe, expect, test } from 'vitest';
import { NO_KEYS, wedgeKey } from './wedge.ts';

/** Sends keys, each so many ms after the one before. @returns every code that was heard */
function send(keys: readonly string[], apartMs: number | readonly number[]): string[] {
  let wedge = NO_KEYS;
  let atMs = 1_000;
  const heard: string[] = [];
  keys.forEach((key, at) => {
    atMs += typeof apartMs === 'number' ? apartMs : (apartMs[at] ?? 0);
    const { wedge: next, code } = wedgeKey(wedge, key, atMs);
    wedge = next;
    if (code !== undefined) heard.push(code);
  });
  return heard;
}

describe('a scanner that types like a keyboard', () => {
  test.each([0, 2, 15, 30, 45])('is heard with a key every %i ms', (apartMs) => {
    expect(send([...'K58Y9J69', 'Enter'], apartMs)).toEqual(['K58Y9J69']);
  });

  test.each([60, 90, 119, 200, 1_000])('is not a person who types a key every %i ms', (apartMs) => {
    expect(send([...'K58Y9J69', 'Enter'], apartMs)).toEqual([]);
  });

  test('may end with Tab, sends Shift before capitals, and may have one late key', () => {
    expect(send([...'7K3P', 'Tab'], 10)).toEqual(['7K3P']);
    expect(send(['Shift', 'T', '1', '4', 'Shift', 'A', 'Enter'], 8)).toEqual(['T14A']);
    expect(send([...'K58Y9J69', 'Enter'], [10, 10, 10, 110, 10, 10, 10, 10, 10])).toEqual(['K58Y9J69']);
  });

  test('sends a whole address', () => {
    expect(send([...'https://plants.example.org/l/K58Y9J69', 'Enter'], 5)).toEqual(['https://plants.example.org/l/K58Y9J69']);
  });

  test('is heard twice in a row, and after keys that somebody pressed before', () => {
    expect(send([...'T014', 'Enter', ...'T015', 'Enter'], 10)).toEqual(['T014', 'T015']);
    expect(send(['1', '2', ...'T014', 'Enter'], [0, 400, 400, 10, 10, 10, 10])).toEqual(['T014']);
  });

  test('is not heard with few keys, with a key of another kind in between, or without an end', () => {
    expect(send(['1', '2', '3', 'Enter'], 10)).toEqual([]);
    expect(send([...'7K3', 'ArrowLeft', ...'PX9', 'Enter'], 10)).toEqual([]);
    expect(send([...'K58Y9J69'], 10)).toEqual([]);
    expect(send(['Enter', 'Enter'], 10)).toEqual([]);
  });

  test('keeps no more than an address needs', () => {
    expect(send([...'7'.repeat(400), 'Enter'], 1)).not.toContain('7'.repeat(400));
    expect(Math.max(0, ...send([...'7'.repeat(400), 'Enter'], 1).map((code) => code.length))).toBeLessThanOrEqual(300);
  });
});
