import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { soon } from './soon.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const after = <T>(ms: number, news: T) => new Promise<T>((come) => setTimeout(() => come(news), ms));

test('a weak signal holds nobody up for longer than a second, and what comes later still comes', async () => {
  const late = after(5_000, 'the books of noon');
  const heard = soon(late, true);
  await vi.advanceTimersByTimeAsync(1_000);
  expect(await heard).toBeUndefined();
  await vi.advanceTimersByTimeAsync(4_000);
  expect(await late).toBe('the books of noon');
});

test('what comes soon is heard, a refusal too', async () => {
  const heard = soon(after(900, 'signedOut'), true);
  await vi.advanceTimersByTimeAsync(900);
  expect(await heard).toBe('signedOut');
});

test('who has nothing on the phone waits for it', async () => {
  const heard = soon(after(5_000, 'the books of noon'), false);
  await vi.advanceTimersByTimeAsync(5_000);
  expect(await heard).toBe('the books of noon');
});
