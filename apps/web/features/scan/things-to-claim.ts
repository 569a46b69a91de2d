import 'server-only';
import { BatchInList, DonorTree } from '@sprigline/contract';
import { z } from 'zod';
import { placesOf } from '../../lib/lists.ts';
import { placeChoices } from '../../lib/place-path.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import type { Claim } from './claim-ways.tsx';

/** What a label may be put on, once it is known where; nothing before. */
export async function thingsToClaim(programme: string, on: Claim, placeId: string | undefined, standId: string | undefined): Promise<readonly Choice[] | undefined> {
  if (on === 'place') return placeChoices(await placesOf(programme), ({ kind }) => kind !== 'partner');
  if (on === 'batch') return placeId ? batchesAt(programme, placeId) : undefined;
  if (!standId) return undefined;
  const trees = await read(`${apiOf(programme, 'donor-trees')}?${new URLSearchParams({ standId, limit: '200' })}`, z.array(DonorTree));
  return trees.map(({ id, label }) => ({ value: id, words: label }));
}

async function batchesAt(programme: string, placeId: string): Promise<Choice[]> {
  const batches = await read(`${apiOf(programme, 'batches')}?${new URLSearchParams({ placeId, state: 'alive', limit: '200' })}`, z.array(BatchInList));
  return batches.map(({ id, label, donorTree, taxon, place, rows }) => ({ value: id, words: [label ?? `…${id.slice(-6)}`, donorTree?.label ?? taxon?.name, place?.name, rows].filter(Boolean).join(', ') }));
}
