import { learnClock } from './clock.ts';
import type { Store } from './store.ts';

/** An answer of the API as a device sees it; nothing was parsed by a contract, which would weigh more than the whole screen. */
export interface Answered {
  readonly status: number;
  /** Parsed JSON, or nothing. */
  readonly body: unknown;
  /** Seconds until it may be asked again, where the server says so. */
  readonly waitS: number | undefined;
}

export interface Asked {
  readonly method?: 'GET' | 'POST' | 'PUT';
  readonly json?: unknown;
  readonly bytes?: { readonly type: string; readonly content: ArrayBuffer };
  /** Milliseconds until the network counts as not there. */
  readonly patienceMs?: number;
}

export type Ask = (path: string, asked?: Asked) => Promise<Answered>;

const PATIENCE_MS = 30_000;

/** Address of a programme's thing in the API. */
export const apiPath = (programme: string, ...parts: readonly string[]): string => `/api/v1/programmes/${[programme, ...parts].map(encodeURIComponent).join('/')}`;

/**
 * Asks the API from the device, with its session, and learns how far its clock is off.
 *
 * @throws TypeError, or DOMException `TimeoutError`, when there is no connection
 */
export const askFrom = (store: Store, send: typeof fetch = fetch): Ask => async (path, { method = 'GET', json, bytes, patienceMs = PATIENCE_MS } = {}) => {
  const response = await send(path, {
    method,
    headers: { accept: 'application/json, application/problem+json', ...(bytes ? { 'content-type': bytes.type } : json === undefined ? {} : { 'content-type': 'application/json' }) },
    ...(bytes ? { body: bytes.content } : json === undefined ? {} : { body: JSON.stringify(json) }),
    cache: 'no-store',
    credentials: 'same-origin',
    redirect: 'error',
    signal: AbortSignal.timeout(patienceMs),
  });
  const text = await response.text();
  await learnClock(store, response.headers.get('date'), Date.now());
  const waitS = Number(response.headers.get('retry-after') ?? Number.NaN);
  return { status: response.status, body: jsonIn(text), waitS: Number.isFinite(waitS) ? waitS : undefined };
};

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
