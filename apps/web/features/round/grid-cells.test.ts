import { expect, test } from 'vitest';
import { entriesOf } from './answer.ts';
import { tappedBefore } from './grid-before.ts';
import { rootsTold, silentCells, withRest } from './grid-roots.ts';
import { answersOf, celledOf, countsOf, gridRows, type Marks, tapped, withCause } from './grid-cells.ts';
import { cellAfter } from './grid-way.ts';
import type { Stop } from './stop.ts';

const stopOf = (batchId: string, rows: string | null): Stop => ({ batchId, label: batchId.toUpperCase(), stage: 'cutting', donor: null, stand: null, species: null, place: 'Tray 1', placeId: 'tray', isTray: true, rows, held: false, openedOn: '2026-10-01', lastCount: null });
const [a, b] = [{ stop: stopOf('a', '2-3'), n: 5 }, { stop: stopOf('b', '1'), n: 2 }];
const words = { causes: { brown: 'brown and crisp', unclear: 'can’t tell' } };
const round = { day: '2026-11-27', seenBy: '' };
const telling = { look: 'tug', isAll: true, minuteOf: () => 600, before: {} } as const;
const sayings = (marks: Marks, extras = {}, isAll = true) =>
  answersOf([a, b], marks, extras, { ...telling, isAll }).flatMap((answer) => entriesOf(answer, round, words)).map(({ saying }) => saying);

test('rows stand in their order, plants of several rows as even as can be', () => {
  const rows = gridRows([a, b], {});
  expect(rows.map(({ row, parts }) => [row, parts.flatMap(({ cells }) => cells.map(({ key }) => key))])).toEqual([
    [1, ['b/0', 'b/1']], [2, ['a/0', 'a/1', 'a/2']], [3, ['a/3', 'a/4']],
  ]);
});

test('two batches of one row are numbered through; one without rows stands for itself, last', () => {
  const rows = gridRows([{ stop: stopOf('c', null), n: 1 }, b, { stop: stopOf('d', '1'), n: 2 }], {});
  expect(rows.map(({ row, parts }) => [row, parts.map(({ cells }) => cells.map(({ at }) => at))])).toEqual([[1, [[1, 2], [3, 4]]], [undefined, [[1]]]]);
});

test('a tap marks, another takes the mark away', () => {
  expect(tapped(tapped({}, 'a/1'), 'a/2')).toEqual({ 'a/1': 'open', 'a/2': 'open' });
  expect(tapped({ 'a/1': 'brown' }, 'a/1')).toEqual({});
});

test('a cause is told of those just marked, and of none before', () => {
  expect(withCause({ 'a/0': 'black', 'a/1': 'open' }, 'brown')).toEqual({ 'a/0': 'black', 'a/1': 'brown' });
});

test('a look at all becomes a count of each batch: the dead by cause, the gone in nobody’s list', () => {
  expect(sayings({ 'a/0': 'brown', 'a/3': 'brown', 'a/4': 'gone', 'b/0': 'unclear' })).toEqual([
    { kind: 'counted', batchId: 'a', alive: 2, look: 'tug', dead: [{ n: 2, cause: 'brown and crisp', certainty: 'seen' }] },
    { kind: 'counted', batchId: 'b', alive: 1, look: 'tug', dead: [{ n: 1, cause: 'can’t tell', certainty: 'unknown' }] },
  ]);
});

test('without a look at all nothing is counted: only the dead are told', () => {
  expect(sayings({ 'a/0': 'brown' }, {}, false)).toEqual([{ kind: 'died', batchId: 'a', n: 1, cause: 'brown and crisp', certainty: 'seen' }]);
});

test('one more than the books have is counted with the others', () => {
  expect(sayings({}, { b: 1 })).toMatchObject([{ batchId: 'a', alive: 5 }, { batchId: 'b', alive: 3 }]);
  expect(countsOf([a, b], { 'a/0': 'gone', 'b/2': 'open' }, { b: 1 })).toEqual({ open: 1, dead: 1, alive: 6, isOnlyByCount: true });
});

test('roots are told of a batch once every living plant of it has a word, and never of some alone', () => {
  const part: Marks = { 'a/0': 'rooted', 'a/1': 'callused', 'a/2': 'brown', 'b/0': 'unrooted', 'b/1': 'unrooted' };
  expect(sayings(part)).toEqual([
    { kind: 'counted', batchId: 'a', alive: 4, look: 'tug', dead: [{ n: 1, cause: 'brown and crisp', certainty: 'seen' }] },
    { kind: 'counted', batchId: 'b', alive: 2, rooted: 0, look: 'tug', dead: [] },
  ]);
  expect(silentCells([a, b], part, {}, 'tug')).toEqual(['a/3', 'a/4']);
  const all = withRest(part, ['a/3', 'a/4']);
  expect(sayings(all)).toMatchObject([{ alive: 4, rooted: 1 }, { alive: 2, rooted: 0 }]);
  expect(answersOf([a], all, {}, { ...telling, look: 'lifted' })[0]?.numbers).toEqual({ alive: 4, rooted: 1, callused: 1 });
  expect(sayings(all, { a: 1 })).toMatchObject([{ alive: 5 }, {}]);
  expect(sayings(all, { a: 1 })[0]).not.toHaveProperty('rooted');
});

test('from above, or of plants that are no cuttings, no roots are told; a batch of none left has none to tell', () => {
  const all = withRest({}, silentCells([a, b], {}, {}, 'lifted'));
  expect(answersOf([a], all, {}, { ...telling, look: 'look' })[0]?.numbers).toEqual({ alive: 5 });
  const potted = { ...a, stop: { ...a.stop, stage: 'potted' as const } };
  expect(answersOf([potted], all, {}, telling)[0]?.numbers).toEqual({ alive: 5 });
  expect(silentCells([potted], {}, {}, 'lifted')).toEqual([]);
  expect(rootsTold([], 0, 'lifted')).toEqual({});
});

test('marks of roots are no dead ones, and only the dead are told without a look at all', () => {
  expect(countsOf([a, b], { 'a/0': 'rooted', 'a/1': 'brown' }, {})).toEqual({ open: 0, dead: 1, alive: 6, isOnlyByCount: false });
  expect(sayings({ 'a/0': 'rooted', 'a/1': 'brown' }, {}, false)).toEqual([{ kind: 'died', batchId: 'a', n: 1, cause: 'brown and crisp', certainty: 'seen' }]);
});

test('told by batch with roots, a grid shows as many; what was tapped here stays where it was', () => {
  const [answer] = answersOf([a], { 'a/1': 'rooted', 'a/0': 'unrooted', 'a/2': 'unrooted', 'a/3': 'unrooted', 'a/4': 'gone' }, {}, telling);
  if (!answer) throw new Error('nothing was told');
  expect(tappedBefore([a], undefined, { a: answer }).marks).toEqual({ 'a/0': 'rooted', 'a/1': 'unrooted', 'a/2': 'unrooted', 'a/3': 'unrooted', 'a/4': 'gone' });
  const kept = { marks: { 'a/3': 'rooted', 'a/0': 'unrooted', 'a/1': 'unrooted', 'a/2': 'unrooted', 'a/4': 'gone' } as Marks, extras: {} };
  expect(tappedBefore([a], kept, { a: answer }).marks).toEqual(kept.marks);
  expect(tappedBefore([a], kept, { a: { ...answer, numbers: { alive: 4, rooted: 3 } } }).marks['a/2']).toBe('rooted');
});

test('told anew, entries keep their ids', () => {
  const [first] = answersOf([a], {}, {}, telling);
  if (!first) throw new Error('nothing was told');
  expect(answersOf([a], { 'a/0': 'brown' }, {}, { ...telling, before: { a: first } })[0]?.ids['seen']).toBe(first.ids['seen']);
});

test('what a phone knows nothing of, or too much, is no grid', () => {
  expect(celledOf([a.stop, b.stop, { ...b.stop, batchId: 'x', placeId: 'elsewhere' }], 'tray', (id) => (id === 'a' ? 5 : undefined))).toEqual([a]);
  expect(celledOf([a.stop, b.stop], 'tray', () => 300)).toEqual([]);
});

test('opened again, a grid shows what was tapped there, without cells that are no more', () => {
  const kept = { marks: { 'a/1': 'brown', 'a/5': 'black' } as Marks, extras: {} };
  expect(tappedBefore([a], kept, {})).toEqual({ marks: { 'a/1': 'brown' }, extras: { a: 0 } });
  const [answer] = answersOf([a], { 'a/1': 'brown' }, {}, telling);
  if (!answer) throw new Error('nothing was told');
  expect(tappedBefore([a], kept, { a: answer }).marks).toEqual({ 'a/1': 'brown' });
});

test('told by batch meanwhile, a grid shows that', () => {
  const [answer] = answersOf([a], { 'a/1': 'brown', 'a/2': 'gone' }, {}, telling);
  if (!answer) throw new Error('nothing was told');
  const kept = { marks: { 'a/0': 'black' } as Marks, extras: {} };
  expect(tappedBefore([a], kept, { a: answer })).toEqual({ marks: { 'a/3': 'brown', 'a/4': 'gone' }, extras: { a: 0 } });
  expect(tappedBefore([a], kept, { a: { ...answer, numbers: { alive: 6 }, dead: {} } })).toEqual({ marks: {}, extras: { a: 1 } });
});

test('arrows go by what stands beside and below on the screen', () => {
  const spots = [[0, 0], [60, 0], [120, 0], [0, 60], [60, 61], [0, 140]].map(([left = 0, top = 0]) => ({ left, top }));
  expect(['ArrowRight', 'ArrowLeft', 'ArrowDown', 'ArrowUp', 'Home', 'End', 'x'].map((key) => cellAfter(spots, 1, key))).toEqual([2, 0, 4, undefined, 0, 5, undefined]);
  expect(cellAfter(spots, 2, 'ArrowDown')).toBe(4);
  expect(cellAfter(spots, 4, 'ArrowDown')).toBe(5);
  expect(cellAfter(spots, 5, 'ArrowRight')).toBeUndefined();
  expect(cellAfter(spots, 9, 'ArrowRight')).toBeUndefined();
});
