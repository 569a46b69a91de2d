import type { KeptPack, KeptWalk } from '../../lib/phone/pack-shapes.ts';
import { allPacked } from '../../lib/phone/packing.ts';
import type { OutboxItem, SentItem } from '../../lib/phone/outbox-item.ts';
import { allHere, sentLately } from '../../lib/phone/outbox.ts';
import type { Store } from '../../lib/phone/store.ts';

/** What this phone can say of ids: names, and what an earlier entry said. */
export interface KnownHere {
  /** What anything packed is called. */
  readonly names: ReadonlyMap<string, string>;
  /** Where a packed batch stands; one that is in it is in the books, too. */
  readonly placeOf: ReadonlyMap<string, string>;
  /** Of a programme in addresses. */
  readonly zones: ReadonlyMap<string, string>;
  /** What was logged on this phone. */
  readonly own: ReadonlyMap<string, OutboxItem | SentItem>;
}

export async function knownHere(store: Store): Promise<KnownHere> {
  const [{ packs, walks }, here, sent] = await Promise.all([allPacked(store), allHere(store), sentLately(store)]);
  return {
    names: new Map([...packs.flatMap(namesIn), ...walks.flatMap(batchNames)]),
    placeOf: new Map(walks.flatMap(placesOfBatches)),
    zones: new Map(packs.map(({ programme: { handle, zone } }) => [handle, zone])),
    own: new Map([...sent, ...here].map((item) => [item.id, item])),
  };
}

function namesIn({ people, places, stands, donorTrees, taxa, bundles = [], recipes = [] }: KeptPack): [string, string][] {
  return [
    ...[...people, ...places, ...stands].map(({ id, name }): [string, string] => [id, name]),
    ...donorTrees.map(({ id, label }): [string, string] => [id, label]),
    ...taxa.map(({ id, scientificName, commonName }): [string, string] => [id, commonName ?? scientificName]),
    ...bundles.map(({ id, donorTree, stand }): [string, string] => [id, `${donorTree} (${stand})`]),
    ...recipes.map(({ versionId, name, version }): [string, string] => [versionId, `${name} (${version})`]),
  ];
}

const batchNames = ({ round }: KeptWalk): [string, string][] =>
  round.stops.flatMap(({ batches }) => batches.map(({ id, label }): [string, string] => [id, label ?? `…${id.slice(-6)}`]));

const placesOfBatches = ({ round }: KeptWalk): [string, string][] =>
  round.stops.flatMap(({ place, path, batches }) => batches.map(({ id }): [string, string] => [id, [...path, place.name].join(' › ')]));
