import type { Size } from './fill-programme.ts';
import { FIRST, placesOf } from './fill-sources.ts';
import { idOf } from './ids.ts';

const standId = idOf('stand', 2);

/** What is read, by its path in a filled programme. */
export const readingsOf = (size: Size): Readonly<Record<string, string>> => ({
  'funnel of a stand': `readings/funnels?standId=${standId}&by=stand`,
  'diversity of a stand': `readings/diversity?standId=${standId}`,
  'donor trees of a stand': `readings/donors?standId=${standId}&limit=200`,
  'time axis of a stand': `readings/time-axis?standId=${standId}`,
  'time to root of a stand': `readings/time-to-root?standId=${standId}`,
  'forecast of a stand': `readings/forecast?standId=${standId}`,
  'comparison in a stand': `readings/comparison?standId=${standId}&by=season`,
  'leave or call': 'readings/leave-or-call',
  'all lines': 'readings/lines',
  'donor trees at risk': 'readings/donors-at-risk?limit=6',
  'time axis of all': 'readings/time-axis',
  'what is due': 'due',
  'what is due, by place': 'due/places',
  'trace of a planted batch': `trace?batchId=${idOf('batch', 5 * 4 + 3)}`,
  'trace of a mixed batch': `trace?batchId=${idOf('mixed', 1)}`,
  'trace of a tray': `trace?placeId=${idOf('place', FIRST.tray + 7)}`,
  'trace of a house': `trace?placeId=${idOf('place', FIRST.house + 1)}`,
  'trace of a site': `trace?placeId=${idOf('place', FIRST.site + 3)}`,
  'trace of a donor tree': `trace?donorTreeId=${idOf('donor', 11)}`,
  'trace of a lot of medium': `trace?mediumLot=${encodeURIComponent(`Lot ${Math.floor(fillingOf(size) / 100)}`)}`,
  'trace of a filling': `trace?fillingId=${idOf('filling', fillingOf(size))}`,
  'trace of a trip': `trace?tripId=${idOf('trip', 5)}`,
});

/** Of the sixth year: what was stuck into it is potted by now, or waits for its verdict. The first years are all planted or hold nothing. */
const fillingOf = (size: Size): number => 5 * placesOf(size).trays + 101;
