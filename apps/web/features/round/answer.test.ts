import { expect, test } from 'vitest';
import { answerTo, entriesOf, fieldsFor, slipIn } from './answer.ts';
import { answered, blankDraft, roundAfter, type RoundState } from './round-state.ts';
import type { Stop } from './stop.ts';

const words = { causes: { black: 'black base' } };
const stop: Stop = { batchId: 'b1', label: 'T1', stage: 'cutting', donor: null, stand: null, species: null, place: 'Tray 1', placeId: 'p', isTray: true, rows: null, held: false, openedOn: '2026-10-01', lastCount: null };
const told = { said: 'seen', look: 'tug', numbers: { alive: 12, rooted: 3 }, dead: { black: 2 }, minute: 600 } as const;

test('a count becomes one entry, with its dead in words', () => {
  const entries = entriesOf(answerTo(stop, told, undefined), { day: '2026-11-25', seenBy: '' }, words);
  expect(entries.map(({ saying, observedOn, minute }) => ({ saying, observedOn, minute }))).toEqual([
    { observedOn: '2026-11-25', minute: 600, saying: { kind: 'counted', batchId: 'b1', alive: 12, look: 'tug', rooted: 3, dead: [{ n: 2, cause: 'black base', certainty: 'seen' }] } },
  ]);
});

test('blank is not nought: what was not looked at is not sent', () => {
  const [entry] = entriesOf(answerTo(stop, { ...told, numbers: { alive: 12 } }, undefined), { day: '2026-11-25', seenBy: '' }, words);
  expect(entry?.saying).not.toHaveProperty('rooted');
});

test('dead without a count are told as such, one entry a cause', () => {
  const answer = answerTo(stop, { ...told, numbers: {}, dead: { black: 2, chewed: 1 } }, undefined);
  expect(entriesOf(answer, { day: '2026-11-25', seenBy: '' }, words).map(({ saying }) => saying)).toEqual([
    { kind: 'died', batchId: 'b1', n: 2, cause: 'black base', certainty: 'seen' },
    { kind: 'died', batchId: 'b1', n: 1, cause: 'chewed', certainty: 'seen' },
  ]);
});

test('at a site the trees are checked', () => {
  const answer = answerTo({ ...stop, stage: 'planted' }, { ...told, numbers: { alive: 9, notFound: 1 }, dead: {} }, undefined);
  expect(entriesOf(answer, { day: '2026-11-25', seenBy: 'p7' }, words)[0]).toMatchObject({ seenBy: 'p7', saying: { kind: 'checked', alive: 9, notFound: 1, notLooked: 0 } });
});

test('an answer that is changed keeps its id, so that it is written once', () => {
  const first = answerTo(stop, told, undefined);
  const mended = answerTo(stop, { ...told, numbers: { alive: 11 } }, first);
  expect(mended.ids['seen']).toBe(first.ids['seen']);
  expect(entriesOf(mended, { day: '2026-11-25', seenBy: '' }, words)[0]?.id).toBe(first.ids['seen']);
});

test('slips are seen before anything is sent', () => {
  expect(slipIn({ numbers: { alive: 3, rooted: 2, callused: 2 } })).toBe('rootedAboveAlive');
  expect(slipIn({ numbers: { rooted: 2 } })).toBe('aliveMissing');
  expect(slipIn({ numbers: {} })).toBeUndefined();
});

test('roots are asked for only where that look can tell', () => {
  expect(fieldsFor('cutting', 'look')).toEqual(['alive']);
  expect(fieldsFor('cutting', 'lifted')).toEqual(['alive', 'rooted', 'callused']);
  expect(fieldsFor('potted', 'lifted')).toEqual(['alive']);
});

test('what is taken back is forgotten, and what was kept of it is remembered', () => {
  const begun: RoundState = { where: 0, draft: blankDraft('2026-11-25'), isRestored: false };
  const one = roundAfter(begun, { step: 'answer', answer: answered(begun.draft, stop, told), where: 1 });
  const two = roundAfter(one, { step: 'kept', of: stop.batchId, kept: { entries: [], versions: {}, ids: ['x'] } });
  expect(two).toMatchObject({ where: 1, draft: { kept: { [stop.batchId]: { ids: ['x'] } } } });
  const three = roundAfter(two, { step: 'forget', batchId: stop.batchId });
  expect(three.draft.answers).toEqual({});
  expect(three.draft.kept).toHaveProperty(stop.batchId);
});

test('told again, an answer keeps the ids of its entries', () => {
  const begun: RoundState = { where: 0, draft: blankDraft('2026-11-25'), isRestored: false };
  const first = answered(begun.draft, stop, told);
  const { draft } = roundAfter(begun, { step: 'answer', answer: first, where: 1 });
  expect(answered(draft, stop, { ...told, numbers: { alive: 3 } }).ids).toEqual(first.ids);
});
