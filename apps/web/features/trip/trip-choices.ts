import 'server-only';
import { Permission } from '@sprigline/contract';
import { z } from 'zod';
import { peopleOf, standsOf } from '../../lib/lists.ts';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf, workplaceOf } from '../../lib/workplace.ts';

/** All that a trip's form chooses from. */
export async function tripChoices(programme: string) {
  const [stands, people, permissions, { today }] = await Promise.all([
    standsOf(programme), peopleOf(programme), readIfAllowed(apiOf(programme, 'permissions'), z.array(Permission)), workplaceOf(programme),
  ]);
  return { stands, people, permissions: permissions?.body ?? [], today };
}
