import type { Label } from '@sprigline/contract';
import { apiPath, askFrom } from '../../lib/phone/ask.ts';
import { theStore } from '../../lib/phone/store.ts';

/** So long somebody waits with a label in their hand, before they are asked what it is on. Milliseconds. */
const WAITED_FOR_MS = 2_500;

/** What the books know of a label that no pack has; `unheard` where there is no signal, or nobody signed in. */
export async function askElsewhere(programme: string, code: string): Promise<Pick<Label, 'is' | 'id'> | 'unknown' | 'unheard'> {
  if (navigator.onLine === false) return 'unheard';
  try {
    const { status, body } = await askFrom(await theStore())(apiPath(programme, 'labels', code), { patienceMs: WAITED_FOR_MS });
    // The second: it is written as one of our codes, and is neither one nor a label of before.
    if (status === 404 || status === 422) return 'unknown';
    return status === 200 ? (body as Label) : 'unheard';
  } catch {
    return 'unheard';
  }
}
