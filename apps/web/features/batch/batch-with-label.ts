import 'server-only';
import { Label } from '@sprigline/contract';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Which batch bears a label; nothing when none does. */
export async function batchWithLabel(programme: string, label: string): Promise<string | undefined> {
  const code = label.trim().slice(0, 40);
  return code === '' ? undefined : (await readIfAllowed(apiOf(programme, 'labels', code), Label))?.body.batchId;
}
