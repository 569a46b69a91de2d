import 'server-only';
import { BatchInList } from '@sprigline/contract';
import { z } from 'zod';
import { nextLabels } from './next-label.ts';
import { read } from './read.ts';
import { apiOf } from './workplace.ts';

/** Labels to suggest for new batches, by those of the newest batches. */
export async function freeLabels(programme: string, n: number): Promise<string[]> {
  const newest = await read(`${apiOf(programme, 'batches')}?limit=200`, z.array(BatchInList));
  return nextLabels(newest.flatMap(({ label }) => label ?? []), n);
}
