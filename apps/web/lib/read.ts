import 'server-only';
import { forbidden, notFound, redirect } from 'next/navigation';
import { headers } from 'next/headers';
import type { z } from 'zod';
import { type Answer, ask } from './api.ts';
import { Refused } from './refused.ts';

/** Reads for a page: who is not signed in goes to sign in and comes back, what is not there is a page that says so. */
export async function read<T>(path: string, contract: z.ZodType<T>): Promise<T> {
  return (await readVersion(path, contract)).body;
}

/** Like `read`, with the ETag that a change has to name. */
export async function readVersion<T>(path: string, contract: z.ZodType<T>): Promise<Answer<T>> {
  try {
    return await ask(path, contract);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    if (error.problem.status === 401) redirect(`/sign-in?next=${encodeURIComponent((await headers()).get('x-pathname') ?? '/')}`);
    // An address that was mistyped is refused as unfit: for a reader there is nothing there either.
    if (error.problem.status === 404 || error.problem.status === 422) notFound();
    if (error.problem.status === 403) forbidden();
    throw error;
  }
}
