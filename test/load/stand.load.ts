import { expect, test } from 'vitest';
import pg from 'pg';
import { type TestApi, testApi } from '../support/api.ts';
import { asOwner, member } from '../support/people.ts';
import { fillProgramme, type Size } from './fill-programme.ts';

// How the reading of a stand of two hundred donor trees grows with the programme around it. Ratios of one run
// are printed and compared with the bars by eye; no time is asserted.
const SIZES: Readonly<Record<string, Size>> = {
  '100,000 plants': { stands: 10, donors: 2_000, stickings: 5_000 },
  '1,000,000 plants': { stands: 100, donors: 20_000, stickings: 50_000 },
};
const TIMES = 25;

test.each(Object.entries(SIZES))('%s', async (name, size) => {
  const { api, headers, standId } = await filled(name.length === 14 ? 'small-hills' : 'large-hills', size);
  const programme = name.length === 14 ? 'small-hills' : 'large-hills';
  const readings = `/api/v1/programmes/${programme}/readings`;
  const cheapest = await median(api, headers, '/api/v1/me');
  const rows = [['cheapest read', cheapest]] as [string, number][];
  for (const path of [`funnels?standId=${standId}&by=stand`, `diversity?standId=${standId}`, `donors?standId=${standId}&limit=200`, 'lines', 'donors-at-risk?limit=6', 'time-axis']) {
    rows.push([path.replace(standId, '…'), await median(api, headers, `${readings}/${path}`)]);
  }
  console.log(`${name}\n${rows.map(([what, ms]) => `  ${what.padEnd(36)} ${ms.toFixed(1).padStart(8)} ms ${(ms / cheapest).toFixed(1).padStart(6)}x`).join('\n')}`);
  expect(rows.length).toBe(7);
});

async function filled(programme: string, size: Size) {
  const api = await testApi();
  const { headers, programmeId } = await member(api, 'volunteer', programme);
  const standId = await asOwner(api, (sql) => fillProgramme(sql, programmeId, size));
  const sql = new pg.Client({ connectionString: api.database.owner });
  await sql.connect();
  await sql.query('ANALYZE');
  await sql.end();
  return { api, headers, standId };
}

async function median(api: TestApi, headers: Record<string, string>, url: string): Promise<number> {
  const times: number[] = [];
  for (let at = 0; at < TIMES; at += 1) {
    const begin = performance.now();
    const { statusCode, body } = await api.app.inject({ url, headers });
    times.push(performance.now() - begin);
    expect(statusCode, body.slice(0, 300)).toBe(200);
    if ((times.at(-1) ?? 0) > 3_000 && at >= 2) break;
  }
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
}
