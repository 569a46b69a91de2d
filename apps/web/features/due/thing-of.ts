import type { PutOffThing } from './put-off.action.ts';

const KINDS_OF_PLACES = new Set(['round', 'siteCheck']);

/** The thing that a key names, such as `siteCheck.<place>.2025`; nothing for an address that was mistyped. */
export function thingOf(key: string, dueOn: string): PutOffThing | undefined {
  const [kind = '', id = '', season] = key.split('.');
  if (id === '' || dueOn === '') return undefined;
  return { kind, dueOn, ...(KINDS_OF_PLACES.has(kind) ? { placeId: id } : { batchId: id }), ...(season === undefined ? {} : { seasonYear: Number(season) }) };
}
