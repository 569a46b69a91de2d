/** So long somebody who stands there waits for news of what lies on the phone already. Milliseconds. */
const NEWS_AWAITED_MS = 1_000;

/**
 * News, if they come soon; nothing when they are late. They go on coming all the same, and lie here the next time.
 *
 * @param hasIt whether it lies on the phone already: who has nothing waits for it
 */
export function soon<T>(news: Promise<T>, hasIt: boolean): Promise<T | undefined> {
  if (!hasIt) return news;
  return Promise.race([news, new Promise<undefined>((isLate) => setTimeout(isLate, NEWS_AWAITED_MS))]);
}
