import { expect, test } from 'vitest';
import { minuteOf, notCounts, sortField, sortSaid } from './sort-said.ts';

/** A form with the ids that its page made. */
function formOf(told: Readonly<Record<string, string>>): FormData {
  const form = new FormData();
  for (const kind of ['found', 'counted', 'thrownOut', 'lifted', 'potted']) form.set(`ids/${kind}`, `id of ${kind}`);
  for (const [name, value] of Object.entries({ inBooks: '30', 'to/lifted': 'next', ...told })) form.set(/^(inBooks|to|time|writtenAt|minute|madeOn)/.test(name) ? name : `entries/0/${name}`, value);
  return form;
}

test('30 = lifted 14 + back 9 + died 5 + thrown out 1 becomes three entries, in order', () => {
  const form = formOf({
    observedOn: '2026-04-02', 'saying/lifted': '14', 'saying/back': '9', 'saying/dead/0/n': '5', 'saying/dead/0/cause': 'black base', 'saying/thrownOut': '1',
    'saying/thrownReason': 'broken', 'saying/lifted/placeId': 'bench', 'saying/lifted/label': 'L-1', time: '14:30', note: 'warm day',
  });

  expect(sortSaid('tray', true, form)).toMatchObject([
    { id: 'id of counted', line: 1, minute: 870, observedOn: '2026-04-02', note: 'warm day', saying: { kind: 'counted', alive: 24, look: 'lifted', dead: [{ n: 5, cause: 'black base' }] } },
    { id: 'id of thrownOut', line: 2, minute: 870, saying: { kind: 'thrownOut', n: 1, reason: 'broken' } },
    { id: 'id of lifted', line: 3, minute: 870, saying: { kind: 'lifted', n: 14, toBatchId: 'next', placeId: 'bench', label: 'L-1' } },
  ]);
});

test('an emptied tray says so with its last act; more than the books know of is found first', () => {
  const said = sortSaid('tray', true, formOf({ inBooks: '4', 'saying/lifted': '5', 'saying/foundReason': 'two in one hole' }));

  expect(said.map(({ saying }) => saying)).toMatchObject([{ kind: 'found', n: 1, reason: 'two in one hole' }, { kind: 'counted', alive: 5, rooted: 5 }, { kind: 'lifted', n: 5, leavesNone: true }]);
});

test('what is no count is named, and never taken for none in silence', () => {
  expect(notCounts(formOf({ 'saying/lifted': 'many', 'saying/back': '2.5', 'saying/thrownOut': '1', 'saying/dead/1/n': '-1' }))).toEqual(['lifted', 'back', 'dead/1/n']);
});

test.each([
  ['14:30', 870], ['9.05', 545], ['24:00', undefined], ['noon', undefined], [undefined, undefined],
])('%s is minute %s', (time, minute) => {
  expect(minuteOf(time)).toBe(minute);
});

test.each([
  ['counted', 'dead/0/cause', 'dead/0/cause'], ['counted', 'rooted', 'backRooted'], ['counted', 'alive', 'back'], ['lifted', 'n', 'lifted'], ['potted', 'label', 'potted/label'], ['thrownOut', 'reason', 'thrownReason'],
])('what is wrong with %s %s stands beside %s', (kind, field, name) => {
  expect(sortField(kind, field)).toBe(name);
});
