import { expect, test } from 'vitest';
import { csvOf } from './csv.ts';

test('quotes what needs quoting and ends lines as RFC 4180 says', () => {
  expect(csvOf(['place', 'n'], [['House "A", left', 3], ['two\nlines', undefined]])).toBe('\uFEFFplace,n\r\n"House ""A"", left",3\r\n"two\nlines",\r\n');
});

test.each(['=cmd()', '+1', '-1', '@sum', '\tx'])('takes the edge off %s, which a spreadsheet would work out', (text) => {
  expect(csvOf(['a'], [[text]])).toContain(`'${text}`);
});

test('leaves negative numbers alone', () => {
  expect(csvOf(['a'], [[-1]])).toBe('\uFEFFa\r\n-1\r\n');
});
