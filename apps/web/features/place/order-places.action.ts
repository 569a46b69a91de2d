'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { number } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';
import { inWalkingOrder } from './walk-order.ts';

/**
 * Puts places that lie side by side into another order.
 *
 * @param parentId where they lie; nothing for those that lie in no other place
 * @param ids as the page showed them: other neighbours by now are refused
 */
export async function orderPlaces(programme: string, parentId: string | null, ids: readonly string[], before: FormState, form: FormData): Promise<FormState> {
  const told = new Map(ids.map((id) => [id, number(form, id)]));
  const state = await submit(before, form, () => ask(apiOf(programme, 'places', 'walk'), z.unknown(), { method: 'PUT', body: { parentId, placeIds: inWalkingOrder(ids, told) } }));
  if (state.isDone) redirect(pageOf(programme, 'places', ...(parentId === null ? [] : [parentId])) as Route);
  return state;
}
