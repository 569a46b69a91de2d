import { expect, test } from 'vitest';
import { barWidths } from './bar-widths.ts';

test('the widest of each side fills it, none is nothing, and few is still seen', () => {
  expect(barWidths([
    { stage: 'cutting', plants: 1000, donors: 4 }, { stage: 'liner', plants: 500, donors: 2 }, { stage: 'potted', plants: 1, donors: 1 }, { stage: 'planted', plants: 0, donors: 0 },
  ])).toEqual([{ plants: 49, donors: 49 }, { plants: 24.5, donors: 24.5 }, { plants: 1, donors: 12.25 }, { plants: 0, donors: 0 }]);
});
