import { newId } from '../support/people.ts';
import type { Diary } from './diary.ts';

export interface Donor {
  readonly id: string;
  readonly label: string;
  readonly bundleId: string;
  readonly standId: string;
}

export interface Ground {
  readonly donors: readonly Donor[];
  readonly bench: string;
  readonly potBench: string;
  readonly quarantine: string;
  readonly trays: readonly string[];
  readonly recipe: string;
  readonly school: { readonly id: string; readonly bed: string };
  /** On whose land the first stand and the site are. */
  readonly estate: string;
  readonly site: string;
  readonly plots: readonly [string, string];
  readonly tripId: string;
  readonly permission: string;
  readonly filling: string;
  readonly regime: string;
  readonly recipeId: string;
  readonly taxonId: string;
}

interface Made { id: string }

/** Twenty junipers of two stands, every one measured to the metre; a house with twenty trays; a school; a site. */
export async function prepare(diary: Diary): Promise<Ground> {
  const taxon = await diary.make<Made>('taxa', { scientificName: 'Juniperus communis', commonName: 'Juniper', sensitivity: 3 });
  const school = await diary.make<Made>('partners', { name: 'Thornber School', since: '2024-09-01' });
  const estate = await diary.make<Made>('partners', { name: 'Corran Estate', since: '2024-09-01' });
  const stands = [await diary.make<Made>('stands', { name: 'Skell Gill', sensitivity: 3, partnerId: estate.id }), await diary.make<Made>('stands', { name: 'Winterbeck Scar', sensitivity: 3 })];
  const trees: { id: string; label: string; standId: string }[] = [];
  for (let at = 0; at < 20; at += 1) {
    const standId = stands[at % 2]?.id ?? '';
    const label = `${at % 2 === 0 ? 'SG' : 'WS'}-${String(at + 1).padStart(2, '0')}`;
    const { id } = await diary.make<Made>('donor-trees', { label, standId, taxonId: taxon.id });
    await measure(diary, id, at);
    trees.push({ id, label, standId });
  }
  const permission = await diary.make<Made>('permissions', {
    grantedBy: 'The lady of the leaning post', land: 'Skell Gill above 3.417001 -28.583001', standId: stands[0]?.id, quota: 500, validFrom: '2025-09-01', validUntil: '2026-12-31', plantsOwedBack: 20,
  });
  const { tripId, bundles } = await goOut(diary, trees, stands[0]?.id ?? '');
  return { donors: trees.map((tree, at) => ({ ...tree, bundleId: bundles[at] ?? '' })), tripId, permission: permission.id, taxonId: taxon.id, estate: estate.id, ...(await furnish(diary, school.id, estate.id)) };
}

/** Digits that no other number of the year has. */
export const exactPlaceOf = (at: number) => ({ latitude: 3.417_001 + at * 0.010_307, longitude: -28.583_001 - at * 0.010_411 });

async function measure(diary: Diary, treeId: string, at: number): Promise<void> {
  const answer = await diary.ask('PUT', `donor-trees/${treeId}/exact-place`, { ...exactPlaceOf(at), uncertaintyM: 4, directions: `three paces uphill of the leaning post ${at}` });
  if (answer.statusCode >= 300) throw new Error(`an exact place was answered ${answer.statusCode}: ${answer.body}`);
}

/** One trip in October; of each tree one bundle of twenty cuttings. */
async function goOut(diary: Diary, trees: readonly { id: string }[], standId: string): Promise<{ tripId: string; bundles: string[] }> {
  diary.on('2025-10-04');
  const bundles = trees.map(({ id: donorTreeId }) => ({ id: newId(), donorTreeId, cuttings: 20, heightM: 1.5, shoot: 'side', foliage: 'adult', base: 'heel', lengthCm: 12 }));
  const trip = await diary.make<Made>('trips', { wentOn: '2025-10-04', standId, people: 6, note: 'In by the shooters’ track, 3.417001 -28.583001', bundles });
  return { tripId: trip.id, bundles: bundles.map(({ id }) => id) };
}

async function furnish(diary: Diary, schoolId: string, estateId: string) {
  const place = async (kind: string, name: string, more: object = {}): Promise<string> => (await diary.make<Made>('places', { kind, name, ...more })).id;
  const house = await place('house', 'House A');
  const bench = await place('bench', 'Mist bench', { parentId: house });
  const [potBench, quarantine] = [await place('bench', 'Pot bench', { parentId: house }), await place('bench', 'Far bench', { parentId: house })];
  const trays: string[] = [];
  for (let at = 1; at <= 20; at += 1) trays.push(await place('tray', `Tray ${at}`, { parentId: bench, rows: 10, walkOrder: at }));
  const bed = await place('partner', 'School garden', { partnerId: schoolId });
  const recipe = await diary.make<{ id: string; versions: { id: string }[] }>('recipes', {
    name: 'Heel, talc', version: { id: newId(), hormone: 'IBA', hormonePpm: 3000, hormoneForm: 'talc', madeOn: '2025-09-01' },
  });
  const filling = newId();
  await diary.make(`places/${trays[0] ?? ''}/fillings`, { id: filling, filledOn: '2025-10-10', medium: 'sand:peat', mediumLot: 'LOT 7' });
  const regime = await diary.make<Made>(`places/${bench}/regimes`, { fromDay: '2025-10-10', heatC: 18 });
  const site = await diary.make<{ id: string; plots: { id: string }[] }>('sites', {
    name: 'Lowmire Wood', partnerId: estateId, plots: ['A', 'B'].map((name, at) => ({ id: newId(), name, walkOrder: at })),
  });
  const [first, second] = site.plots;
  if (!first || !second) throw new Error('a site without its plots');
  return { bench, potBench, quarantine, trays, filling, regime: regime.id, recipeId: recipe.id, recipe: recipe.versions[0]?.id ?? '', school: { id: schoolId, bed }, site: site.id, plots: [first.id, second.id] as const };
}
