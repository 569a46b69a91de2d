import 'server-only';
import { Label } from '@sprigline/contract';
import { ask } from './api.ts';
import { Refused } from './refused.ts';
import { apiOf } from './workplace.ts';

/** Which batch bears a label; nothing when none does, or when a donor tree or a place bears it. */
export async function batchWithLabel(programme: string, label: string): Promise<string | undefined> {
  const code = label.trim().slice(0, 40);
  if (code === '') return undefined;
  try {
    const { body } = await ask(apiOf(programme, 'labels', code), Label);
    return body.is === 'batch' ? body.id : undefined;
  } catch (error) {
    // Unknown, mistyped, or not for this person: whoever asks says so in words of the page.
    if (error instanceof Refused && error.problem.status < 500) return undefined;
    throw error;
  }
}
