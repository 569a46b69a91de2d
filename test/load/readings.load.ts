import { expect, test } from 'vitest';
import { largeProgramme, SIZES } from './large-programme.ts';
import { asking, besides, type Measured, printRatios } from './ratios.ts';
import { readingsOf } from './readings.ts';

// How readings grow with the programme around them. Ratios of one run are printed and compared with the bars by
// eye; no time is asserted. The bars: a stand of two hundred donor trees three times the cheapest read, a trace two seconds.
// LOAD_ONLY=<words> asks for those readings only, LOAD_SIZE=<words> for those programmes.
const [ONLY, SIZE] = [process.env['LOAD_ONLY'] ?? '', process.env['LOAD_SIZE'] ?? ''];

test.each(Object.entries(SIZES).filter(([name]) => name.startsWith(SIZE)))('readings of %s', async (name, size) => {
  const { api, volunteer: { headers } } = await largeProgramme(size);
  const cheapest = asking(api, headers, '/api/v1/me');
  const rows: Measured[] = [];
  for (const [what, path] of Object.entries(readingsOf(size)).filter(([one]) => one.includes(ONLY))) {
    rows.push(await besides(what, cheapest, asking(api, headers, `/api/v1/programmes/large-hills/${path}`)));
  }
  printRatios(name, rows);
  expect(rows.every(({ ms }) => ms > 0)).toBe(true);
});
