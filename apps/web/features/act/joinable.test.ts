import type { PackedBooks } from '@sprigline/contract';
import { expect, test } from 'vitest';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { batchesHere } from '../../lib/phone/batch-here.ts';
import type { KeptWalk } from '../../lib/phone/pack-shapes.ts';
import { type Act, entryOf } from './act.ts';
import { joinable } from './joinable.ts';
import type { FieldPackNow } from './use-field-pack.ts';

const [house, frame, plot] = ['house', 'frame', 'plot'];
const STICKING = 'sticking';

interface Asked {
  readonly id: string;
  readonly stage: PackedBooks['batch']['stage'];
  readonly placeId: string;
  readonly n: number;
  readonly stickingId?: string | undefined;
  readonly held?: boolean;
}

/** A walk through one place with these batches in it, each opened by what came in. */
function walkOf(id: string, batches: readonly Asked[]): KeptWalk {
  const books = batches.map(({ id: batchId, stage, placeId, n, stickingId }): PackedBooks => ({
    batch: { id: batchId, stage, stickingId, openingEntryId: `${batchId}-opened`, openingPlaceId: placeId },
    entries: [{ id: `${batchId}-opened`, observedOn: '2026-03-01', receivedOn: '2026-03-01', door: 'desk', saying: { kind: 'received', batchId, stickingId, stage, n, source: 'opening', placeId, candidates: [] } }],
  }));
  const stops = [{ place: { id, name: id, kind: 'bench' }, path: [], batches: batches.map(({ id: batchId, stage, held = false }) => ({ id: batchId, label: batchId, stage, held, donorTree: null, taxon: null, stand: null })) }];
  return { programme: 'harrowdale', kind: 'places', id, name: id, packedAt: 0, books, round: { stops } } as unknown as KeptWalk;
}

const tray = walkOf(house, [{ id: 'C1', stage: 'cutting', placeId: house, n: 40, stickingId: STICKING }, { id: 'C2', stage: 'cutting', placeId: house, n: 10, stickingId: STICKING }, { id: 'M1', stage: 'cutting', placeId: house, n: 6 }]);
const pots = walkOf(frame, [
  { id: 'P1', stage: 'potted', placeId: frame, n: 5, stickingId: STICKING }, { id: 'P2', stage: 'potted', placeId: frame, n: 5, stickingId: 'another' },
  { id: 'P3', stage: 'liner', placeId: frame, n: 5, stickingId: STICKING }, { id: 'P4', stage: 'potted', placeId: frame, n: 5, stickingId: STICKING, held: true }, { id: 'M2', stage: 'potted', placeId: frame, n: 5 },
]);
const found = (entries: readonly EntryToSend[] = []): Pick<FieldPackNow, 'walks' | 'pack' | 'entries' | 'today'> => ({ walks: [tray, pots], pack: { places: [] } as unknown as FieldPackNow['pack'], entries, today: '2026-03-02' });
const batchOf = (id: string, entries: readonly EntryToSend[] = []) => batchesHere(tray, [], entries, [tray, pots]).find((batch) => batch.id === id)!;
const idsOf = (act: Act, id: string, placeId: string | undefined, entries: readonly EntryToSend[] = []) => joinable(act, batchOf(id), placeId, found(entries)).map(({ batch, balance }) => [batch.id, balance]);
const told = (act: Act, id: string, n: number, placeId: string, ids: { entryId: string; toBatchId: string }, joinId?: string): EntryToSend =>
  entryOf(act, id, { n, placeId, joinId }, ids, { day: '2026-03-02', seenBy: '' }, { writtenAt: '2026-03-02T10:00:00Z' });

test('plants join a batch of the same sticking, as far on, at that place, on whatever walk it is packed', () => {
  expect(idsOf('pot', 'C1', frame)).toEqual([['P1', 5]]);
  expect(idsOf('lift', 'C1', frame)).toEqual([['P3', 5]]);
  expect(idsOf('move', 'C1', house)).toEqual([['C2', 10]]);
});

test('nothing is joined where none stands, before a place is chosen, by plants of a mixed batch, or by what goes nowhere', () => {
  expect([idsOf('plant', 'C1', plot), idsOf('pot', 'C1', undefined), idsOf('pot', 'M1', frame), idsOf('throwOut', 'C1', frame)]).toEqual([[], [], [], []]);
});

test('what was potted up here an hour ago is joined by the next few, and an empty batch by none', () => {
  const first = told('pot', 'C1', 12, plot, { entryId: 'e1', toBatchId: 'N1' });
  expect(idsOf('pot', 'C2', plot, [first])).toEqual([['N1', 12]]);
  const second = told('pot', 'C2', 3, plot, { entryId: 'e2', toBatchId: 'unused' }, 'N1');
  expect(idsOf('pot', 'C2', plot, [first, second])).toEqual([['N1', 15]]);
  const gone: EntryToSend = { ...first, id: 'e3', saying: { kind: 'thrownOut', batchId: 'N1', n: 15, reason: 'frost' } };
  expect(idsOf('pot', 'C2', plot, [first, second, gone])).toEqual([]);
});

test('what joins a batch of another walk begins no new one here', () => {
  const join = told('pot', 'C1', 2, frame, { entryId: 'e1', toBatchId: 'unused' }, 'P1');
  expect(batchesHere(tray, [], [join], [tray, pots]).filter(({ isNew }) => isNew)).toEqual([]);
  expect(idsOf('pot', 'C1', frame, [join])).toEqual([['P1', 7]]);
});
