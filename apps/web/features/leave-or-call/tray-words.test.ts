import { expect, test } from 'vitest';
import { plantsSaid } from './tray-words.ts';

test.each([[0, '0'], [0.04, '0'], [0.06, '0.1'], [3.26, '3.3'], [9.96, '10.0'], [12.4, '12']])('%d plants are said as %s', (n, said) => {
  expect(plantsSaid(n)).toBe(said);
});
