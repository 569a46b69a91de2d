import { expect, test } from 'vitest';
import { between, boxOfRow, type Frame, rowsOf, trayRows, WHOLE_PICTURE } from './tray-rows.ts';

const frame: Frame = { left: 10, top: 20, right: 90, bottom: 80, labelSide: 'top' };

test.each<[Frame['labelSide'], number, ReturnType<typeof boxOfRow>]>([
  ['top', 1, { x: 10, y: 20, width: 80, height: 15 }],
  ['top', 4, { x: 10, y: 65, width: 80, height: 15 }],
  ['bottom', 1, { x: 10, y: 65, width: 80, height: 15 }],
  ['left', 2, { x: 30, y: 20, width: 20, height: 60 }],
  ['right', 1, { x: 70, y: 20, width: 20, height: 60 }],
])('with the label at the %s, row %i of four lies there', (labelSide, row, box) => {
  expect(boxOfRow({ ...frame, labelSide }, row, 4)).toEqual(box);
});

test('the rows of a tray fill its frame, none over another', () => {
  for (const labelSide of ['top', 'right', 'bottom', 'left'] as const) {
    const boxes = Array.from({ length: 7 }, (_, at) => boxOfRow({ ...WHOLE_PICTURE, labelSide }, at + 1, 7));
    expect(boxes.reduce((sum, { width, height }) => sum + width * height, 0)).toBeCloseTo(10_000, 6);
    expect(new Set(boxes.map(({ x, y }) => `${x.toFixed(3)} ${y.toFixed(3)}`)).size).toBe(7);
  }
});

test('two corners make a frame, in whichever order, and never out of the picture', () => {
  expect(between({ x: 90.4, y: 101 }, { x: -3, y: 5.6 })).toEqual({ left: 0, top: 6, right: 90, bottom: 100 });
});

test('rows are read as they are told', () => {
  expect([null, '3', '3-5', '5-3'].map(rowsOf)).toEqual([[], [3], [3, 4, 5], [3, 4, 5]]);
});

test('a tray has the rows that somebody told, and those that its batches stand in', () => {
  const [a, b, c] = [{ rows: '1-2' }, { rows: '2' }, { rows: null }];
  expect(trayRows(3, [a, b, c])).toEqual({ rows: [{ row: 1, batches: [a] }, { row: 2, batches: [a, b] }, { row: 3, batches: [] }], elsewhere: [c] });
  expect(trayRows(1, [b]).rows).toHaveLength(2);
  expect(trayRows(null, [c]).rows).toEqual([]);
});
