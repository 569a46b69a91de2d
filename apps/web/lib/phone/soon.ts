/** So long somebody who stands there waits for news of what lies on the phone already. Milliseconds. */
const NEWS_AWAITED_MS = 1_000;

/** News, if it comes soon; nothing when it is late. It goes on coming all the same, and lies here the next time. */
export function soon<T>(news: Promise<T>): Promise<T | undefined> {
  return Promise.race([news, new Promise<undefined>((isLate) => setTimeout(isLate, NEWS_AWAITED_MS))]);
}
