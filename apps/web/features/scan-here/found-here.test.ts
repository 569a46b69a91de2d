import type { BatchOnRound } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { newId } from '../../lib/new-id.ts';
import type { KeptWalk } from '../../lib/phone/pack-shapes.ts';
import type { OwnItem } from '../../lib/phone/use-own.ts';
import { claimWork } from './claims-here.ts';
import { foundHere, type Here } from './found-here.ts';
import { pageHere, whereItLeads } from './where-it-leads.ts';
import { thingsHere } from './things-here.ts';

const [house, tray, pots, t1, t2, alone, tree] = Array.from({ length: 7 }, newId) as [string, string, string, string, string, string, string];
const [CODE, NEW, EARLIER] = ['K58Y9J69', '24PFJ628', '3JN2C3CH'];
/** Of an old numbering: it looks like one of ours with a wrong character in it. */
const OLD = 'WS23 4456';

const batch = (id: string, label: string | null): BatchOnRound => ({ id, label, stage: 'cutting', held: false, donorTree: { id: tree, label: 'CR-1' }, taxon: null, stand: null }) as unknown as BatchOnRound;
const walk = (id: string, name: string, kind: KeptWalk['kind'] = 'places'): KeptWalk => ({
  programme: 'harrowdale', kind, id, name, packedAt: 0, books: [],
  labels: [{ code: EARLIER, batchId: t1 }, { code: OLD, batchId: t2 }],
  round: { stops: [
    { place: { id: tray, name: 'T1', kind: 'tray' }, path: [name], batches: [batch(t1, 'A-1'), batch(t2, null)] },
    { place: { id: pots, name: 'Pots', kind: 'tray' }, path: [name], batches: [batch(alone, 'A-2')] },
  ] },
}) as unknown as KeptWalk;
const pack = {
  places: [{ id: house, name: 'House 1', kind: 'house', parentId: null, batches: 3 }, { id: tray, name: 'T1', kind: 'tray', parentId: house, batches: 2 }, { id: pots, name: 'Pots', kind: 'tray', parentId: house, batches: 1 }],
  donorTrees: [{ id: tree, label: 'CR-1', standId: 'stand', taxonId: 'taxon', state: 'standing' }],
  stands: [{ id: 'stand', name: 'Corran Ridge', cell: null }],
  labels: [{ code: CODE, is: 'donorTree', id: tree }, { code: 'House', is: 'place', id: house }, { code: 'Tray', is: 'place', id: tray }, { code: 'POTS', is: 'place', id: pots }],
} as unknown as Here['pack'];
const [list, round] = [walk(newId(), 'calling', 'work-lists'), walk(house, 'House 1')];
const here: Here = { pack, walks: [list, round], own: [] };
const own = (work: OwnItem['work'], more: object = {}): OwnItem => ({ id: newId(), programme: 'harrowdale', author: { personId: '', name: '' }, about: '', at: 1, keptAt: 1, work, ...more });

test.each([
  ['a batch, in the walk that one came from', 'a-1', { is: 'batch', batchId: t1, walk: round }],
  ['a batch by an earlier label, however it is typed', '3jn2 c3ch', { is: 'batch', batchId: t1, label: 'A-1' }],
  ['a batch by a label of an old numbering', 'ws23 4456', { is: 'batch', batchId: t2 }],
  ['a donor tree', 'K58Y 9J69', { is: 'donorTree', id: tree, label: 'CR-1' }],
  ['a place that is walked', 'house', { is: 'place', id: house, walk: round, batchId: undefined }],
  ['a tray of several batches', 'tray', { is: 'place', id: tray, walk: round, batchId: undefined }],
  ['a tray of one batch', 'pots', { is: 'place', id: pots, walk: round, batchId: alone }],
  ['a code that no pack knows', NEW, { is: 'code' }],
  ['somebody’s own label that no pack knows', 'X-99', { is: 'unknown' }],
])('a label is found on %s', (_, typed, found) => {
  expect(foundHere(typed, here, house)).toMatchObject(found);
});

test('a label that was put on something here leads there, unless the server did not take it', () => {
  const { work } = claimWork('harrowdale', newId(), { code: NEW, on: { batchId: t2 } });
  expect(foundHere(NEW.toLowerCase(), { ...here, own: [own(work)] }, house)).toMatchObject({ is: 'batch', batchId: t2 });
  const refusal = { type: '/problems/batch/label-taken', title: 'Taken', status: 409 };
  expect(foundHere(NEW, { ...here, own: [own(work, { refusal })] }, house)).toEqual({ is: 'code' });
  expect(foundHere(NEW, { ...here, own: [own(claimWork('harrowdale', newId(), { code: NEW, on: { donorTreeId: tree } }).work)] }, house)).toMatchObject({ is: 'donorTree', id: tree });
});

test('what was stuck here under a label is found by it before anything is sent', () => {
  const saying = { kind: 'stuck' as const, batchId: newId(), stickingId: newId(), bundleId: newId(), n: 20, placeId: tray, label: NEW };
  const stuck = own({ kind: 'entry', entry: { id: newId(), observedOn: '2026-11-02', writtenAt: '2026-11-02T18:00:00Z', saying } });
  expect(foundHere(NEW, { ...here, own: [stuck] }, undefined)).toMatchObject({ is: 'batch', batchId: saying.batchId, walk: round });
});

test('packs of before labels were packed find batches by the label that is shown', () => {
  const { labels: _, ...before } = pack;
  const old: Here = { ...here, pack: before, walks: [{ ...round, labels: undefined }] };
  expect(foundHere('A-2', old, undefined)).toMatchObject({ is: 'batch', batchId: alone });
  expect(foundHere(CODE, old, undefined)).toEqual({ is: 'code' });
});

test('each leads to where it is logged', () => {
  const to = (typed: string) => {
    const found = foundHere(typed, here, house);
    return found.is === 'code' || found.is === 'unknown' ? found.is : whereItLeads('harrowdale', found);
  };
  expect(to('A-1')).toBe(`/field#/harrowdale/batch/${house}/${t1}`);
  expect(to(CODE)).toBe(`/field#/harrowdale/trip/${tree}`);
  expect(to('House')).toBe(`/field#/harrowdale/round/${house}`);
  expect(to('Pots')).toBe(`/field#/harrowdale/batch/${house}/${alone}`);
});

test('codes on paper open the same walk here, and no other programme’s', () => {
  expect(pageHere('harrowdale', `/programmes/harrowdale/work-lists/${tray}/type`)).toBe(`/field#/harrowdale/list/${tray}`);
  expect(pageHere('harrowdale', `/programmes/harrowdale/places/${house}/round`)).toBe(`/field#/harrowdale/round/${house}`);
  expect(pageHere('harrowdale', `/programmes/lowmire/work-lists/${tray}/type`)).toBeUndefined();
  expect(pageHere('harrowdale', '/programmes/harrowdale/stands')).toBeUndefined();
});

test('a new label goes on batches of the walk, once each, on donor trees and on places', () => {
  expect(thingsHere('batch', here, undefined).map(({ id, walkId }) => [id, walkId])).toEqual([[t1, list.id], [t2, list.id], [alone, list.id]]);
  expect(thingsHere('batch', here, house)[0]).toMatchObject({ id: t1, walkId: house, within: 'T1 · CR-1' });
  expect(thingsHere('donorTree', here, house)).toMatchObject([{ name: 'CR-1', within: 'Corran Ridge' }]);
  expect(thingsHere('place', here, house).map(({ name, within }) => [name, within])).toEqual([['House 1', ''], ['T1', 'House 1'], ['Pots', 'House 1']]);
});
