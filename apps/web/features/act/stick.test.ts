import { NewEntry } from '@sprigline/contract';
import { expect, test } from 'vitest';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { newId } from '../../lib/new-id.ts';
import type { OwnItem } from '../../lib/phone/use-own.ts';
import { bundleChoices, leftOf, stickSlip, type StickTold, stuckHere, stuckSaid, traysStuck } from './stick.ts';

const [bundleId, placeId, batchId, stickingId, recipe] = [newId(), newId(), newId(), newId(), newId()];
const ids = { batchId, stickingId };
const asEntry = (saying: EntryToSend['saying']): EntryToSend => ({ id: newId(), observedOn: '2026-03-01', writtenAt: '2026-03-01T19:00:00Z', saying });

test.each<readonly [StickTold, string | undefined, object]>([
  [{ bundleId, placeId, n: 18 }, undefined, { kind: 'stuck', batchId, stickingId, n: 18, placeId, bundleId }],
  [
    { bundleId, placeId, n: 18, rows: ' 3-5 ', damaged: 2, how: ' girdled', stripped: 0, label: ' A-7 ' }, recipe,
    { kind: 'stuck', batchId, stickingId, n: 18, placeId, bundleId, recipeVersionId: recipe, rows: '3-5', damaged: [{ n: 2, how: 'girdled' }], strippedAround: 0, label: 'A-7' },
  ],
])('a line becomes one entry, which the contract takes: %o', (told, recipeVersionId, saying) => {
  const said = stuckSaid(told, ids, recipeVersionId);
  expect(said).toEqual(saying);
  expect(NewEntry.safeParse(asEntry(said)).success).toBe(true);
});

test.each<readonly [StickTold, string | undefined]>([
  [{ placeId, n: 1 }, 'bundle'],
  [{ bundleId, n: 1 }, 'where'],
  [{ bundleId, placeId }, 'howMany'],
  [{ bundleId, placeId, n: 1, rows: '0' }, 'rows'],
  [{ bundleId, placeId, n: 1, rows: 'three' }, 'rows'],
  [{ bundleId, placeId, n: 1, damaged: 2 }, 'damagedAbove'],
  [{ bundleId, placeId, n: 2, damaged: 1 }, 'how'],
  [{ bundleId, placeId, n: 2, stripped: 3 }, 'strippedAbove'],
  [{ bundleId, placeId, n: 2, label: 'a-1' }, 'labelTaken'],
  [{ bundleId, placeId, n: 2, rows: '12', damaged: 2, how: 'torn', stripped: 2, label: 'A-2' }, undefined],
])('%o lacks: %s', (told, slip) => {
  expect(stickSlip(told, new Set(['A-1']))).toBe(slip);
});

const bundle = (id: string, donorTree: string, cuttings: number, stuck: number) => ({ id, donorTree, tripDay: '2026-02-28', taxon: 'Juniperus communis', stand: 'Corran Ridge', cuttings, stuck });
const item = (entry: EntryToSend, more: object): OwnItem => ({ id: entry.id, programme: 'harrowdale', author: { personId: 'me', name: 'Me' }, about: '', work: { kind: 'entry', entry }, ...more }) as OwnItem;

test('what is left of a bundle knows what was stuck here since, once', () => {
  const bundles = [bundle('b1', 'CR-1', 40, 10), bundle('b2', 'CR-2', 12, 0)];
  const stick = (of: string, n: number) => asEntry({ kind: 'stuck', batchId: newId(), stickingId, n, placeId, bundleId: of });
  const undone = stick('b1', 9);
  const own = [
    item(stick('b1', 5), { at: 1, keptAt: 2_000 }),
    item(stick('b2', 12), { sentAt: 2_000, status: 'written', flags: [] }),
    // In the pack already.
    item(stick('b1', 10), { sentAt: 900, status: 'written', flags: [] }),
    item(undone, { sentAt: 2_000, status: 'written', flags: [] }),
    item(asEntry({ kind: 'withdrawn', entryId: undone.id, sawVersion: undone.id, reason: 'a slip' }), { at: 2, keptAt: 2_100 }),
  ];
  const left = leftOf(bundles, own, 1_000);
  expect([...left]).toEqual([['b1', 25], ['b2', 0]]);
  expect(bundleChoices(bundles.toReversed(), left, (_, n) => `${n} left`)).toEqual([{ id: 'b1', name: 'CR-1', within: '25 left' }, { id: 'b2', name: 'CR-2', within: '0 left' }]);
});

test('a tray is offered for its portrait once, with the day of its last line; a frame has no rows', () => {
  const line = (into: string, observedOn: string): OwnItem => {
    const entry = { ...asEntry(stuckSaid({ bundleId, placeId: into, n: 3 }, ids, undefined)), observedOn };
    return { id: entry.id, programme: 'harrowdale', author: { personId: 'p', name: 'Ada' }, about: 'D1', at: 1, keptAt: 1, work: { kind: 'entry', entry } };
  };
  const places = [{ id: 'f', kind: 'frame' }, { id: 't1', kind: 'tray' }, { id: 't2', kind: 'tray' }];
  const own = [line('t2', '2026-03-01'), line('f', '2026-03-01'), line('t1', '2026-03-01'), line('t2', '2026-03-02')];
  expect(traysStuck(stuckHere(own), places).map(({ tray, day }) => [tray.id, day])).toEqual([['t2', '2026-03-02'], ['t1', '2026-03-01']]);
});
