import 'server-only';
import type { z } from 'zod';
import { type Answer, ask } from './api.ts';
import { Refused } from './refused.ts';

/** For a part of a page that not everybody may see, or that is not told yet: nothing instead of a refusal. */
export async function readIfAllowed<T>(path: string, contract: z.ZodType<T>): Promise<Answer<T> | undefined> {
  try {
    return await ask(path, contract);
  } catch (error) {
    if (error instanceof Refused && [401, 403, 404].includes(error.problem.status)) return undefined;
    throw error;
  }
}
