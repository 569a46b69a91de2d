import { v7 as newId } from 'uuid';

/** @typedef {import('./client.mjs').Client} Client */

/** So many days of readings, up to now: the chart of a place shows the last thirty. */
const DAYS_READ = 14;

/**
 * How the house of the sticking night is kept, what its thermometer showed, what was
 * sprayed, and a lamp that is still off.
 *
 * @param {Client} owner
 */
export async function keepTheHouse(owner) {
  const places = await owner.send('GET', owner.of('places'));
  const house = places.find((/** @type {{ name: string }} */ { name }) => name === 'House C').id;
  const bench = places.find((/** @type {{ parentId: string }} */ { parentId }) => parentId === house).id;
  await owner.add(`places/${house}/regimes`, { fromDay: '2026-10-01', lightHours: null, heatC: 5, air: 'air', cover: null });
  await owner.add(`places/${bench}/regimes`, { fromDay: '2026-10-18', lightHours: 12, heatC: 18, air: 'mist', cover: 'lid' });
  await owner.add(`places/${bench}/regimes`, { fromDay: '2026-11-15', lightHours: 16, heatC: 20, air: 'mist', cover: 'lid', note: 'First callus seen: more light.' });
  await owner.send('POST', owner.of('climate'), { readings: readingsUntil(Date.now(), bench) });
  await owner.log('desk', [
    { observedOn: '2026-11-12', minute: 17 * 60 + 30, note: 'Nobody else was in the house.', saying: { kind: 'treated', placeId: bench, what: 'spray', product: 'Skellwater fungicide (invented)', registration: 'not known', rate: '8 ml in 5 l, 1 bench', appliedBy: 'Rowan Thwaite, licensed', reentryHours: 12 } },
    { observedOn: '2026-11-13', saying: { kind: 'treated', placeId: bench, what: 'vented' } },
    { observedOn: '2026-11-16', saying: { kind: 'incident', placeId: bench, what: 'lightsOff', severity: 'slight', lastGoodOn: '2026-11-15', detail: 'One lamp of three is dark.' } },
  ]);
}

/**
 * Morning and afternoon, cooler and moister at first.
 *
 * @param {number} now milliseconds
 * @param {string} placeId
 */
function readingsUntil(now, placeId) {
  return Array.from({ length: DAYS_READ * 2 }, (_, at) => {
    const takenAt = new Date(now - (DAYS_READ * 2 - at) * 12 * 3_600_000).toISOString();
    const warmth = 16 + at / 8 + (at % 2) * 3.5;
    return { id: newId(), placeId, takenAt, temperatureC: Math.round(warmth * 10) / 10, humidityPercent: 94 - (at % 2) * 7 - (at % 5) };
  });
}
