import 'server-only';
import type { z } from 'zod';
import { readVersion } from './read.ts';

export interface Part<T> {
  readonly items: T;
  /** What the next part begins after; nothing at the end. */
  readonly after: string | undefined;
}

/** One part of a long list, and where the next begins (RFC 8288 `Link`, rel="next"). */
export async function readPart<T>(path: string, contract: z.ZodType<T>): Promise<Part<T>> {
  const { body, headers } = await readVersion(path, contract);
  const next = /<([^>]+)>;\s*rel="next"/.exec(headers.get('link') ?? '')?.[1];
  return { items: body, after: next === undefined ? undefined : (new URL(next, 'http://api').searchParams.get('after') ?? undefined) };
}
