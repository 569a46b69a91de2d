import 'server-only';
import { z } from 'zod';
import { ask } from './api.ts';
import { apiOf } from './workplace.ts';

/**
 * Writes a new record. Its id was made with the page, so that sending twice writes once.
 *
 * @param noun as in the API's addresses, such as `['trips', tripId, 'bundles']`
 * @throws Refused
 */
export async function addRecord(programme: string, noun: readonly string[], body: unknown): Promise<void> {
  await ask(apiOf(programme, ...noun), z.unknown(), { method: 'POST', body });
}

/**
 * Changes a record as it was seen.
 *
 * @param etag of the version that the person saw; another one is refused
 * @throws Refused
 */
export async function changeRecord(programme: string, noun: readonly string[], etag: string, body: unknown, method: 'PUT' | 'PATCH' = 'PUT'): Promise<void> {
  await ask(apiOf(programme, ...noun), z.unknown(), { method, body, ifMatch: etag });
}
