import { expect, test } from 'vitest';
import { largeProgramme, SIZES } from './large-programme.ts';
import { printRatios, timeOf } from './ratios.ts';
import { READINGS } from './readings.ts';

// How readings grow with the programme around them. Ratios of one run are printed and compared with the bars by
// eye; no time is asserted. The bars: a stand of two hundred donor trees three times the cheapest read, a trace two seconds.
test.each(Object.entries(SIZES))('readings of %s', async (name, size) => {
  const { api, volunteer: { headers } } = await largeProgramme(size);
  const rows: [string, number][] = [['cheapest read', await timeOf(api, headers, '/api/v1/me')]];
  for (const [what, path] of Object.entries(READINGS)) rows.push([what, await timeOf(api, headers, `/api/v1/programmes/large-hills/${path}`)]);
  printRatios(name, rows);
  expect(rows.every(([, ms]) => ms > 0)).toBe(true);
});
