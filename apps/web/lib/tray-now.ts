import 'server-only';
import { BatchInList, Photo, type Place } from '@sprigline/contract';
import { z } from 'zod';
import { read } from './read.ts';
import { type TrayRow, trayRows } from './tray-rows.ts';
import { apiOf } from './workplace.ts';

/** A tray as it was filled last: its rows with what stands or stood in them, and the newest picture of it. */
export interface TrayNow {
  readonly rows: readonly TrayRow<BatchInList>[];
  readonly elsewhere: readonly BatchInList[];
  readonly portrait: Photo | undefined;
}

/** Nothing for what is no tray, or where nobody knows of a row. */
export async function trayNow(programme: string, place: Place): Promise<TrayNow | undefined> {
  if (place.kind !== 'tray') return undefined;
  const [batches, [newest]] = await Promise.all([
    read(`${apiOf(programme, 'batches')}?placeId=${place.id}&limit=200`, z.array(BatchInList)),
    read(`${apiOf(programme, 'places', place.id, 'photos')}?kind=portrait&limit=1`, z.array(Photo)),
  ]);
  const since = place.fillings[0]?.filledOn ?? '';
  const { rows, elsewhere } = trayRows(place.rows, batches.filter(({ balance, openedOn }) => balance > 0 || openedOn >= since));
  if (rows.length === 0) return undefined;
  // A picture from before it was filled anew shows other plants.
  return { rows, elsewhere: elsewhere.filter(({ balance }) => balance > 0), portrait: newest && newest.takenOn >= since ? newest : undefined };
}
