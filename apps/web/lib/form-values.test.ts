import { expect, test } from 'vitest';
import { day, isTicked, number, text } from './form-values.ts';

function formOf(values: Record<string, string>): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries(values)) form.set(name, value);
  return form;
}

test('an empty field says nothing', () => {
  const form = formOf({ name: '   ', rows: '' });
  expect(text(form, 'name')).toBeUndefined();
  expect(number(form, 'rows')).toBeUndefined();
  expect(number(form, 'missing')).toBeUndefined();
});

test('nought is a number, not nothing', () => {
  expect(number(formOf({ rows: '0' }), 'rows')).toBe(0);
});

test('a decimal comma is read as people write it', () => {
  expect(number(formOf({ height: ' 1,5 ' }), 'height')).toBe(1.5);
});

test('what is no number goes on as typed, for the API to refuse', () => {
  expect(number(formOf({ rows: 'twelve' }), 'rows')).toBe('twelve');
});

test('another day is the one that was typed', () => {
  expect(day(formOf({ on: '2026-11-25', 'on/another': '2026-01-01' }), 'on')).toBe('2026-11-25');
  expect(day(formOf({ on: 'another', 'on/another': '2026-01-01' }), 'on')).toBe('2026-01-01');
  expect(day(formOf({ on: 'another', 'on/another': '' }), 'on')).toBeUndefined();
});

test('a box is ticked or not there', () => {
  expect(isTicked(formOf({ seesExact: 'on' }), 'seesExact')).toBe(true);
  expect(isTicked(formOf({}), 'seesExact')).toBe(false);
});
