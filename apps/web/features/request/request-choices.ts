import 'server-only';
import { Permission } from '@sprigline/contract';
import { z } from 'zod';
import { partnersOf, placesOf, standsOf, taxaOf } from '../../lib/lists.ts';
import { placeChoices } from '../../lib/place-path.ts';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf, workplaceOf } from '../../lib/workplace.ts';
import type { RequestChoices } from './request-fields.tsx';

/** All that a request's form chooses from. */
export async function requestChoices(programme: string): Promise<RequestChoices> {
  const [partners, taxa, stands, places, permissions, { today }] = await Promise.all([
    partnersOf(programme), taxaOf(programme), standsOf(programme), placesOf(programme), readIfAllowed(apiOf(programme, 'permissions'), z.array(Permission)), workplaceOf(programme),
  ]);
  return {
    partners: partners.filter(({ until }) => until === null || until >= today), taxa, stands, today,
    sites: placeChoices(places, ({ kind }) => kind === 'site' || kind === 'plot'),
    permissions: permissions?.body ?? [],
  };
}
