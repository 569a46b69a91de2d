import { expect, test } from 'vitest';
import { NEW_TREE, outingSaid, treeSaid } from './outing-said.ts';
import { treeWork, tripWork } from './outing-work.ts';

const form = (fields: Record<string, string>): FormData => {
  const data = new FormData();
  for (const [name, value] of Object.entries(fields)) data.set(name, value);
  return data;
};
const trip = { wentOn: '2026-10-03', standId: 'skell-gill' };
const said = (fields: Record<string, string>, labels: readonly string[] = []) => treeSaid(form({ donorTreeId: 'cr-1', ...fields }), trip, new Set(labels));
const faults = (fields: Record<string, string>, labels?: readonly string[]) => said(fields, labels).faults.map(({ name, what }) => [name, what]);

test('a trip: another day, and who led it', () => {
  const { told, faults: wrong } = outingSaid(form({ wentOn: 'another', 'wentOn/another': '2026-10-03', standId: 'skell-gill', ledBy: 'ada', people: '4' }));
  expect([told, wrong]).toEqual([{ wentOn: '2026-10-03', standId: 'skell-gill', ledBy: 'ada', people: 4 }, []]);
  expect(outingSaid(form({ people: '0' })).faults.map(({ name, what }) => [name, what])).toEqual([['wentOn', 'missing'], ['standId', 'missing'], ['people', 'outside']]);
});

test('a new tree with its bundle and its place, in decimals of either kind', () => {
  const { told, faults: wrong } = said({ donorTreeId: NEW_TREE, label: ' SG-9 ', taxonId: 'yew', ageClass: 'old', cuttings: '24', heightM: '2,5', base: 'heel', 'place/latitude': '3,4170012', 'place/longitude': '-28.5', 'place/uncertaintyM': '6' });
  expect(wrong).toEqual([]);
  expect(told.tree).toEqual({ label: 'SG-9', standId: 'skell-gill', taxonId: 'yew', sex: 'unknown', ageClass: 'old', estimatedAgeYears: undefined, state: 'standing', stateSeenOn: '2026-10-03' });
  expect(told.bundle).toMatchObject({ cuttings: 24, heightM: 2.5, base: 'heel' });
  expect(told.place).toEqual({ latitude: 3.417001, longitude: -28.5, uncertaintyM: 6, elevationM: null, directions: null });
});

test.each<[string, Record<string, string>, (readonly [string, string])[]]>([
  ['nothing at a known tree', {}, [['cuttings', 'missing']]],
  ['no cuttings, but how they were cut', { shoot: 'top', 'place/latitude': '1', 'place/longitude': '1' }, [['cuttings', 'missing']]],
  ['no number', { cuttings: 'many' }, [['cuttings', 'noNumber']]],
  ['half a cutting', { cuttings: '2.5' }, [['cuttings', 'notWhole']]],
  ['half a place', { cuttings: '2', 'place/latitude': '3.4' }, [['place/longitude', 'bothOrNone']]],
  ['a way without a place', { cuttings: '2', 'place/directions': 'uphill' }, [['place/latitude', 'bothOrNone']]],
  ['a place beyond the pole', { cuttings: '2', 'place/latitude': '91', 'place/longitude': '1' }, [['place/latitude', 'outside']]],
  ['a label that is in use', { donorTreeId: NEW_TREE, label: 'CR-1', taxonId: 'yew' }, [['label', 'inUse']]],
])('%s is asked about beside its field', (_, fields, expected) => {
  expect(faults(fields, ['CR-1'])).toEqual(expected);
});

test('a new tree may stand there uncut', () => {
  expect(faults({ donorTreeId: NEW_TREE, label: 'CR-2', taxonId: 'yew' }, ['CR-1'])).toEqual([]);
});

test('what is sent: the trip, then the tree before its bundle before its place, with the ids made here', () => {
  const tripItem = tripWork('harrowdale', { ...trip, id: 'trip-1' }, 'Skell Gill');
  expect(tripItem.work).toEqual({ kind: 'record', method: 'POST', path: '/api/v1/programmes/harrowdale/trips', body: { ...trip, id: 'trip-1' } });
  const { told } = said({ donorTreeId: NEW_TREE, label: 'SG-9', taxonId: 'yew', cuttings: '24' });
  const place = { id: 'letter', sealed: { keyId: 'key', enc: 'enc', ciphertext: 'text' } };
  const items = treeWork('harrowdale', { tripId: 'trip-1', donorTreeId: 'tree-1', label: 'SG-9', tree: told.tree, bundle: told.bundle && { ...told.bundle, id: 'bundle-1' }, place, takenOn: '2026-03-01', takenBy: 'ann' });
  expect(items.map(({ id, about, work }) => [id, about, work.kind === 'record' && `${work.method} ${work.path.replace('/api/v1/programmes/harrowdale', '')}`])).toEqual([
    ['tree-1', 'SG-9', 'POST /donor-trees'],
    ['bundle-1', 'SG-9', 'POST /trips/trip-1/bundles'],
    ['letter', 'SG-9', 'PUT /donor-trees/tree-1/sealed-place'],
  ]);
  expect(items.map(({ work }) => work.kind === 'record' && work.body)).toMatchObject([{ id: 'tree-1', label: 'SG-9' }, { id: 'bundle-1', donorTreeId: 'tree-1', cuttings: 24 }, { sealed: place.sealed }]);
});

test('photos of a tree stand behind the tree they show, and a known tree may be told by photos alone', () => {
  const form = new FormData();
  form.set('donorTreeId', 'tree-1');
  expect(treeSaid(form, trip, new Set()).faults).toHaveLength(1);
  expect(treeSaid(form, trip, new Set(), true).faults).toEqual([]);
  const tree = { label: 'SG-9', standId: 'stand-1', taxonId: 'taxon-1', sex: 'unknown', state: 'standing', stateSeenOn: trip.wentOn } as const;
  const items = treeWork('harrowdale', { tripId: 'trip-1', donorTreeId: 'tree-1', label: 'SG-9', tree, photos: [{ id: 'photo-1', bytes: new ArrayBuffer(3) }], takenOn: trip.wentOn, takenBy: 'ann' });
  expect(items.map(({ id }) => id)).toEqual(['tree-1', 'photo-1']);
  // Not told to be harmless: the server keeps it for those who see exact places.
  expect(items[1]?.work).toMatchObject({ kind: 'photo', path: `/api/v1/programmes/harrowdale/photos/photo-1?donorTreeId=tree-1&takenOn=${trip.wentOn}&takenBy=ann` });
});
