import type { Label } from '@sprigline/contract';
import { apiPath, askFrom } from '../../lib/phone/ask.ts';
import { theStore } from '../../lib/phone/store.ts';

/** So long somebody with a label in the hand waits for the server. Milliseconds. */
const PATIENCE_MS = 2_500;

/** What the books know of a label that no pack has; `unheard` where there is no signal, or nobody signed in. */
export async function askElsewhere(programme: string, code: string): Promise<Pick<Label, 'is' | 'id'> | 'unknown' | 'unheard'> {
  if (navigator.onLine === false) return 'unheard';
  try {
    const { status, body } = await askFrom(await theStore())(apiPath(programme, 'labels', code), { patienceMs: PATIENCE_MS });
    if (status === 404) return 'unknown';
    return status === 200 ? (body as Label) : 'unheard';
  } catch {
    return 'unheard';
  }
}
