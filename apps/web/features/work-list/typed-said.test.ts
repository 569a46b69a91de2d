import { expect, test } from 'vitest';
import { linesSaid } from './typed-said.ts';

const BENCH = '01234567-89ab-7def-8123-456789abcdef';
const places = new Map([['house a › bench 1', BENCH]]);

function formOf(fields: Readonly<Record<string, string>>): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  return form;
}

test('a line on which nothing stands is left out, also when a cause is chosen beforehand', () => {
  expect(linesSaid(formOf({ 'lines/1/alive': '', 'lines/1/cause': 'can’t tell', placeId: BENCH }), 'rootCheck', [1, 2], places)).toEqual({ said: [], lost: [] });
});

test('blank is not nought, and a nought is told', () => {
  const { said } = linesSaid(formOf({ 'lines/1/alive': '0', 'lines/1/rooted': '', 'lines/1/dead': '0', 'lines/2/alive': ' 12 ', 'lines/2/dead': '3', 'lines/2/cause': 'black base' }), 'rootCheck', [1, 2], places);
  expect(said).toEqual([{ number: 1, alive: 0 }, { number: 2, alive: 12, dead: [{ n: 3, cause: 'black base', certainty: 'seen' }] }]);
});

test('what goes on stands where the sheet says, unless the line says otherwise', () => {
  const there = '01234567-89ab-7def-8123-000000000000';
  const { said, lost } = linesSaid(
    formOf({ placeId: there, container: '1 L pot', 'lines/1/potted': '4', 'lines/1/leavesNone': 'on', 'lines/2/potted': '2', 'lines/2/placeId': 'House A › Bench 1', 'lines/3/dead': '1', 'lines/3/cause': 'chewed', 'lines/4/potted': '1', 'lines/4/placeId': 'nowhere' }),
    'pottingUp', [1, 2, 3, 4], places,
  );
  expect(said).toEqual([
    { number: 1, potted: 4, leavesNone: true, placeId: there, container: '1 L pot' },
    { number: 2, potted: 2, placeId: BENCH, container: '1 L pot' },
    { number: 3, dead: [{ n: 1, cause: 'chewed', certainty: 'seen' }] },
  ]);
  expect(lost).toEqual([4]);
});

test('what is no number goes on as it was typed, so that the API can say so', () => {
  expect(linesSaid(formOf({ 'lines/1/alive': 'l2' }), 'rootCheck', [1], places).said).toEqual([{ number: 1, alive: 'l2' }]);
  expect(linesSaid(formOf({ 'lines/1/planted': '2', 'lines/1/positions': 'r1 c1; r1 c2,', placeId: BENCH }), 'plantingDay', [1], places).said).toEqual([{ number: 1, planted: 2, positions: ['r1 c1', 'r1 c2'], placeId: BENCH }]);
});
