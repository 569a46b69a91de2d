import 'server-only';
import { TrayCards } from '@sprigline/contract';
import { freeLabels } from '../../lib/free-labels.ts';
import { recipesOf } from '../../lib/lists.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { cardsOfStuck, cardsToCome, type TrayCard } from './cards.ts';

/** What an address asks of the cards; what makes no sense is left out. */
export interface CardsAsked {
  readonly per?: string | undefined;
  readonly recipe?: string | undefined;
}

export interface CardsOfTrip {
  readonly trip: TrayCards;
  readonly toCome: readonly TrayCard[];
  readonly stuck: readonly TrayCard[];
  readonly most: number | undefined;
}

export async function cardsOfTrip(programme: string, tripId: string, { per, recipe }: CardsAsked): Promise<CardsOfTrip> {
  const [trip, recipes] = await Promise.all([read(apiOf(programme, 'trips', tripId, 'tray-cards'), TrayCards), recipesOf(programme)]);
  const told = Number(per);
  const most = Number.isInteger(told) && told > 0 ? told : undefined;
  const cards = cardsToCome(trip, most);
  const labels = await freeLabels(programme, cards.length);
  const name = recipes.find(({ id }) => id === recipe)?.name;
  return { trip, most, stuck: cardsOfStuck(trip), toCome: cards.map((card, at) => ({ ...card, label: labels[at] ?? '', recipe: name })) };
}

/** Where the code of a card leads: to the batch, or to whatever batch its label has been given to by then. */
export function cardLeadsTo(address: string, batches: string, { batchId, label }: TrayCard): string {
  return batchId === undefined ? `${address}${batches}?label=${encodeURIComponent(label)}` : `${address}${batches}/${batchId}`;
}
