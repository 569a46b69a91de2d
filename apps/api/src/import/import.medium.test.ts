import type { DryRun, Funnels, Import } from '@sprigline/contract';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { testApi, type TestApi } from '../../../../test/support/api.ts';
import { newId, signedIn, type SessionHeaders } from '../../../../test/support/people.ts';

const FIXTURES = join(import.meta.dirname, '../../../../test/fixtures');
const sheet = (name: string): Buffer => readFileSync(join(FIXTURES, name));

let api: TestApi;
const coordinators = new Map<string, SessionHeaders>();
beforeAll(async () => {
  api = await testApi();
});

/** Asks as the coordinator of a programme, which is made if it is not there. */
async function asked(programme: string, method: 'GET' | 'POST' | 'PUT', path: string, payload?: object | Buffer) {
  const headers = coordinators.get(programme) ?? (await signedIn(api, 'coordinator', programme));
  coordinators.set(programme, headers);
  const type = Buffer.isBuffer(payload) ? { 'content-type': 'text/csv' } : {};
  const reply = await api.app.inject({ method, url: `/api/v1/programmes/${programme}/${path}`, headers: { ...headers, ...type }, ...(payload && { payload }) });
  return { status: reply.statusCode, body: reply.json() };
}

async function upload(programme: string, name: string, content = sheet(name), id = newId()) {
  return asked(programme, 'POST', `imports?id=${id}&fileName=${encodeURIComponent(name)}`, content);
}

/** What a person does who finds every guess right. */
async function decideAsGuessed(programme: string, read: Import) {
  const acts = Object.fromEntries(read.guess.words.filter(({ act }) => act).map(({ word, act }) => [word, act]));
  const spellings = Object.fromEntries(
    Object.entries(read.guess.spellings).map(([field, groups]) => [field, Object.fromEntries(groups.filter(({ sameApartFromCase }) => sameApartFromCase).flatMap(({ keep, spellings: seen }) => seen.map((one) => [one.seen.trim().toLowerCase(), keep])))]),
  );
  return asked(programme, 'PUT', `imports/${read.id}/plan`, { columns: read.guess.columns, acts, dayOrder: read.guess.dayOrders[0], spellings });
}

async function written(programme: string, id: string, how: object = {}): Promise<Import> {
  expect((await asked(programme, 'POST', `imports/${id}/writing`, how)).status).toBe(202);
  for (;;) {
    const { body } = await asked(programme, 'GET', `imports/${id}`);
    if (body.state !== 'writing') return body;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

async function imported(programme: string, name: string, content?: Buffer, how?: object): Promise<Import> {
  const { body: read } = await upload(programme, name, content);
  expect((await decideAsGuessed(programme, read)).status).toBe(200);
  return written(programme, read.id, how);
}

const ROW = '2024-10-07,stuck,T001,SG-01,Skell Gill,Juniperus communis,24,,,House A,,,\n';
const HEADING = 'date,what,label,donor,stand,species,count,rooted,to_label,place,recipe,cause,notes\n';
const count = (day: string, n: number) => `${day},counted,T001,,,,${n},,,,,,\n`;

describe('a group’s log sheet of two seasons', () => {
  const NAME = 'ok/log-sheet-two-seasons.csv';

  test('is read with every guess right', async () => {
    const { status, body } = await upload('harrowdale', NAME);

    expect(status).toBe(201);
    expect(body.guess).toMatchObject({ encoding: 'utf-8', delimiter: ',', rows: 1268, dayOrders: ['ymd'] });
    expect(body.guess.words.every(({ act }: { act?: string }) => act)).toBe(true);
    expect(body.guess.spellings.stand.map(({ keep }: { keep: string }) => keep)).toEqual(expect.arrayContaining(['Skell Gill', 'Thornber Edge', 'Winterbeck Scar']));
  });

  test('imports whole, and the same file again changes nothing', async () => {
    const first = await imported('harrowdale', NAME);
    expect(first).toMatchObject({ state: 'written', result: { written: 1268, replaced: 0, same: 0 } });

    const before = await asked('harrowdale', 'GET', 'readings/funnels?by=stand');
    const again = await imported('harrowdale', NAME);
    expect(again).toMatchObject({ state: 'written', result: { written: 0, replaced: 0, same: 1268 } });
    expect((await asked('harrowdale', 'GET', 'readings/funnels?by=stand')).body).toEqual(before.body);
  });

  // Two replays by different hands, this one's and the naive one of test/naive, came to these totals.
  test('closes its books with the totals that two independent replays gave', async () => {
    const { groups }: Funnels = (await asked('harrowdale', 'GET', 'readings/funnels')).body;
    const sum = (of: (stage: Funnels['groups'][number]['stages'][number]) => number): number => (groups[0]?.stages ?? []).reduce((total, stage) => total + of(stage), 0);

    expect({
      here: sum(({ here }) => here),
      died: sum(({ died }) => Object.values(died).reduce((dead, n) => dead + n, 0)),
      unaccounted: sum(({ unaccounted }) => unaccounted),
      notRooted: sum(({ notRooted }) => notRooted),
      thrownOut: sum(({ thrownOut }) => thrownOut),
      givenOut: sum(({ givenOut }) => givenOut),
    }).toEqual({ here: 607, died: 219, unaccounted: 682, notRooted: 137, thrownOut: 0, givenOut: 51 });
  });

  test('gives a funnel whose stages close, stand by stand', async () => {
    const { groups }: Funnels = (await asked('harrowdale', 'GET', 'readings/funnels?by=stand')).body;

    expect(groups.map(({ name }) => name)).toEqual(['Corran Ridge', 'Lowmire Wood', 'Skell Gill', 'Thornber Edge', 'Winterbeck Scar']);
    for (const { stages } of groups) {
      for (const [at, { reached, goneOn, died, unaccounted, notRooted, thrownOut, givenOut, here }] of stages.entries()) {
        const dead = Object.values(died).reduce((sum, n) => sum + n, 0);
        expect(reached).toBe(goneOn + dead + unaccounted + notRooted + thrownOut + givenOut + here);
        if (at > 0) expect(reached).toBeGreaterThanOrEqual(stages[at - 1]?.goneOn ?? 0);
      }
    }
  });
});

test('labels of an old numbering that look like codes of ours are brought as they are, and found', async () => {
  const old = 'WS23 4456';
  const labelled = HEADING + ROW.replace('T001', old) + count('2024-11-07', 20).replace('T001', old.toLowerCase());
  expect(await imported('old-labels', 'old.csv', Buffer.from(labelled))).toMatchObject({ state: 'written', result: { written: 2 } });
  const { status, body } = await asked('old-labels', 'GET', `labels/${encodeURIComponent(old)}`);
  expect([status, body.code, body.is]).toEqual([200, old, 'batch']);
  expect((await asked('old-labels', 'GET', `batches/${body.id}`)).body).toMatchObject({ label: old, balance: 20 });
  expect(await asked('old-labels', 'POST', 'labels', { code: 'WS23 4457', batchId: body.id })).toMatchObject({ status: 422, body: { type: '/problems/label/mistyped' } });
});

describe('the same sheet with changes', () => {
  test('rows added bring only those', async () => {
    await imported('longer', 'sheet.csv', Buffer.from(HEADING + ROW + count('2025-01-05', 20)));
    const longer = await imported('longer', 'sheet.csv', Buffer.from(HEADING + ROW + count('2025-01-05', 20) + count('2025-02-05', 19)));

    expect(longer.result).toMatchObject({ written: 1, same: 2 });
  });

  test('rows changed are listed, and replaced only when asked', async () => {
    await imported('mended', 'sheet.csv', Buffer.from(HEADING + ROW + count('2025-01-05', 20)));
    const mended = Buffer.from(HEADING + ROW + count('2025-01-05', 21));
    const { body: read } = await upload('mended', 'sheet.csv', mended);
    await decideAsGuessed('mended', read);
    const { body: dryRun }: { body: DryRun } = await asked('mended', 'GET', `imports/${read.id}/dry-run`);
    expect(dryRun).toMatchObject({ added: 0, same: 1, changedCount: 1, changed: [{ row: 3 }] });

    expect((await written('mended', read.id, { replaceChanged: true })).result).toMatchObject({ written: 0, replaced: 1 });
    const { groups }: Funnels = (await asked('mended', 'GET', 'readings/funnels')).body;
    expect(groups[0]?.stages[0]).toMatchObject({ reached: 24, here: 21, unaccounted: 3 });
    expect((await imported('mended', 'sheet.csv', mended)).result).toMatchObject({ written: 0, replaced: 0, same: 2 });
  });
});

describe('sheets as spreadsheets write them', () => {
  test.each(readdirSync(join(FIXTURES, 'ok')).filter((name) => name !== 'log-sheet-two-seasons.csv'))('%s imports', async (name) => {
    const programme = name.replace(/\W+/g, '-').slice(0, 40).replace(/-$/, '');
    const result = await imported(programme, `ok/${name}`);

    expect(result).toMatchObject({ state: 'written', result: { written: 3 } });
    const { groups }: Funnels = (await asked(programme, 'GET', 'readings/funnels')).body;
    expect(groups[0]?.stages.map(({ reached, here }) => [reached, here])).toEqual([[24, 15], [5, 5], [0, 0], [0, 0]]);
  });
});

describe('sheets with a fault', () => {
  const FAULTS = readdirSync(join(FIXTURES, 'not-ok'));

  test.each(FAULTS)('%s is refused, saying so', async (name) => {
    const fault = name.replace(/\.\w+$/, '');
    const { body: read, status } = await upload('faulty', `not-ok/${name}`);
    if (status !== 201) return expect(read.type).toBe(`/problems/import/${fault}`);
    if (fault === 'day-order-unclear') return expect(read.guess.dayOrders).toEqual(['dmy', 'mdy']);

    const decided = await decideAsGuessed('faulty', read);
    if (decided.status !== 200) return expect(decided.body.type).toBe(`/problems/import/${fault}`);

    const { body: dryRun }: { body: DryRun } = await asked('faulty', 'GET', `imports/${read.id}/dry-run`);
    expect(dryRun.faults.map(({ code }) => code)).toContain(fault);
    expect((await written('faulty', read.id)).failure).toBe('import/has-faults');
  });

  test('leave nothing half written', async () => {
    expect((await asked('faulty', 'GET', 'readings/choices')).body).toMatchObject({ stands: [], taxa: [], recipes: [], seasons: [] });
  });

  test('a sheet of 200 MB is refused before it is read', async () => {
    const { status, body } = await upload('faulty', 'huge.csv', Buffer.alloc(200 * 1024 * 1024, 'x'));

    expect([status, body.type]).toEqual([413, '/problems/http/too-large']);
  });
});
