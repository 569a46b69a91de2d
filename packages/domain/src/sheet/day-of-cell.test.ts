import { describe, expect, test } from 'vitest';
import { dayOfCell, possibleDayOrders } from './day-of-cell.ts';

describe('dayOfCell', () => {
  test.each([
    ['2025-03-09', 'ymd', '2025-03-09'],
    ['2025/3/9', 'ymd', '2025-03-09'],
    ['9.3.2025', 'dmy', '2025-03-09'],
    ['09/03/2025', 'dmy', '2025-03-09'],
    ['09/03/2025', 'mdy', '2025-09-03'],
    ['2025-03-09 00:00:00', 'ymd', '2025-03-09'],
    [' 29/02/2024 ', 'dmy', '2024-02-29'],
  ] as const)('reads %s in order %s', (cell, order, day) => {
    expect(dayOfCell(cell, order)).toBe(day);
  });

  test.each([
    ['29/02/2025', 'dmy', 'no leap year'],
    ['31/04/2025', 'dmy', 'April has 30 days'],
    ['13/13/2025', 'dmy', 'no month 13'],
    ['09/03/25', 'dmy', 'a year of two digits could be a day'],
    ['2025-03-09 14:30', 'ymd', 'a time of day'],
    ['last Tuesday', 'dmy', 'words'],
    ['45000', 'ymd', 'a spreadsheet’s day number'],
    ['0025-03-09', 'ymd', 'a year before there were records'],
  ] as const)('refuses %s in order %s: %s', (cell, order, _why) => {
    expect(dayOfCell(cell, order)).toBeUndefined();
  });
});

describe('possibleDayOrders', () => {
  test('one order when a day above 12 tells', () => {
    expect(possibleDayOrders(['03/04/2025', '25/04/2025'])).toEqual(['dmy']);
    expect(possibleDayOrders(['03/04/2025', '04/25/2025', ''])).toEqual(['mdy']);
    expect(possibleDayOrders(['2025-03-04'])).toEqual(['ymd']);
  });

  test('two orders when nothing tells: nobody may guess', () => {
    expect(possibleDayOrders(['03/04/2025', '05/06/2025'])).toEqual(['dmy', 'mdy']);
  });

  test('none when no cell is a day; the best when a few are not', () => {
    expect(possibleDayOrders(['yesterday', ''])).toEqual([]);
    expect(possibleDayOrders(['25/04/2025', '26/04/2025', 'yesterday'])).toEqual(['dmy']);
  });
});
