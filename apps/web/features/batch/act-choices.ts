import 'server-only';
import { type Batch, BatchInList, PossibleSticking } from '@sprigline/contract';
import { z } from 'zod';
import { sayDay } from '../../lib/calendar.ts';
import { freeLabels } from '../../lib/free-labels.ts';
import { partnersOf, placesOf, recipesOf } from '../../lib/lists.ts';
import { newId } from '../../lib/new-id.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { choicesOf } from '../../ui/form/choices.ts';
import { isAtSite, isInNursery, placeChoices } from '../../lib/place-path.ts';
import type { ActChoices } from './act-fields.tsx';
import type { Act } from './acts.ts';
import { labelOf } from './line-nodes.ts';

/** All that the form of an act chooses from. */
export async function actChoices(programme: string, batch: Batch, act: Act): Promise<ActChoices> {
  const [places, partners, others, [label], possible, recipes] = await Promise.all([
    placesOf(programme), partnersOf(programme), act === 'join' ? siblingsOf(programme, batch) : [], freeLabels(programme, 1),
    act === 'identify' ? read(apiOf(programme, 'batches', batch.id, 'possible-stickings'), z.array(PossibleSticking)) : [], act === 'restick' ? recipesOf(programme) : [],
  ]);
  return {
    label,
    toBatchId: newId(),
    newStickingId: newId(),
    stickings: possible.map(({ id, donorTree, fromLabel, stuckOn }) => ({ value: id, words: [donorTree?.label, fromLabel, stuckOn && sayDay(stuckOn)].filter(Boolean).join(', ') })),
    recipes: recipes.flatMap(({ name, versions: [newest] }) => (newest ? [{ value: newest.id, words: `${name} (${newest.version})` }] : [])),
    places: placeChoices(places, act === 'plant' || batch.stage === 'planted' ? isAtSite : isInNursery),
    partners: choicesOf(partners.filter(({ until }) => until === null)),
    partnerPlaces: placeChoices(places, ({ kind, partnerId }) => kind === 'partner' || partnerId !== null),
    joinable: others.map((other) => ({ value: `${other.id}@${other.place?.id ?? ''}`, words: [labelOf(other), other.place?.name].filter(Boolean).join(', ') })),
  };
}

/** Batches of the same sticking and stage: only plants that are copies and as far on stand in one batch. */
async function siblingsOf(programme: string, { id, stage, line }: Batch): Promise<BatchInList[]> {
  if (!line.sticking) return [];
  const query = new URLSearchParams({ stickingId: line.sticking.id, stage, state: 'alive', limit: '200' });
  const all = await read(`${apiOf(programme, 'batches')}?${query}`, z.array(BatchInList));
  return all.filter((other) => other.id !== id && other.place !== null);
}
