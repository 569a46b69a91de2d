import 'server-only';
import type { z } from 'zod';
import { ask } from './api.ts';

/** Sends a file as it is. @throws Refused */
export async function sendFile<T>(path: string, contract: z.ZodType<T>, file: File, method: 'POST' | 'PUT' = 'POST'): Promise<T> {
  return (await ask(path, contract, { method, file: await file.arrayBuffer() })).body;
}
