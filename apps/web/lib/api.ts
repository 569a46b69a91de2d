import 'server-only';
import { Problem } from '@sprigline/contract';
import { headers } from 'next/headers';
import type { z } from 'zod';
import { Refused } from './refused.ts';
import { apiAddress } from './settings.ts';

export interface Ask {
  readonly method?: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Sent as JSON. */
  readonly body?: unknown;
  /** Sent as it is, instead of a body. */
  readonly file?: ArrayBuffer;
  /** The ETag of the version that the person saw, for changes to records. */
  readonly ifMatch?: string | undefined;
}

export interface Answer<T> {
  readonly body: T;
  /** Version of what was read; empty where the API gives none. */
  readonly etag: string;
  readonly headers: Headers;
}

/**
 * Asks the API on behalf of the person who looks at the page.
 *
 * @param path below the server, such as `/api/v1/me`
 * @param contract every answer is parsed by it: a page never guesses at a shape
 * @throws Refused with the API's problem
 */
export async function ask<T>(path: string, contract: z.ZodType<T>, { method = 'GET', body, file, ifMatch }: Ask = {}): Promise<Answer<T>> {
  const response = await fetch(`${apiAddress()}${path}`, {
    method,
    headers: {
      ...(await whoAsks()),
      ...(file ? { 'content-type': 'application/octet-stream' } : body === undefined ? {} : { 'content-type': method === 'PATCH' ? 'application/merge-patch+json' : 'application/json' }),
      ...(ifMatch ? { 'if-match': ifMatch } : {}),
    },
    ...(file ? { body: file } : body === undefined ? {} : { body: JSON.stringify(body) }),
    cache: 'no-store',
    redirect: 'error',
  });
  if (!response.ok) throw new Refused(await problemOf(response));

  const text = await response.text();
  const answer = contract.parse(text === '' ? undefined : JSON.parse(text));
  return { body: answer, etag: response.headers.get('etag') ?? '', headers: response.headers };
}

/** The browser's own words on who and where it is, and the front's stamp on them: the API decides by them, not we. */
async function whoAsks(): Promise<Record<string, string>> {
  const inward = await headers();
  const passedOn: Record<string, string> = { accept: 'application/json, application/problem+json' };
  for (const name of ['cookie', 'origin', 'sec-fetch-site', 'accept-language', 'user-agent', 'x-sprigline-asked-from']) {
    const value = inward.get(name);
    if (value !== null) passedOn[name] = value;
  }
  return passedOn;
}

async function problemOf(response: Response): Promise<Problem> {
  const text = await response.text();
  const parsed = Problem.safeParse(jsonOrNothing(text));
  return parsed.success ? parsed.data : { type: 'about:blank', title: response.statusText || 'No answer', status: response.status };
}

function jsonOrNothing(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
