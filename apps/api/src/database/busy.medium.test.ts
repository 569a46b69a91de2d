// An entry, or a record that changes hands, waits for the ledger, and a sheet of thousands of rows may hold it for long.
import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner } from '../../../../test/support/people.ts';
import { LOCK_ALL, locksOf } from '../entry/pages/locks.queries.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const address = `/api/v1/programmes/harrowdale/stands/${place.standId}`;

test('while a sheet is written, an entry and a change of a stand are told to come again, and change nothing', async () => {
  const { batchId } = await desk.stick(10, { label: 'B-1' });
  const counted = desk.entry('2026-01-05', { kind: 'counted', batchId, alive: 9, look: 'look', dead: [] });
  const { headers, body } = await desk.get(`stands/${place.standId}`);
  const { name, partnerId, sensitivity, note } = body as Record<string, unknown>;
  const change = () => api.app.inject({
    method: 'PUT', url: address, headers: { ...desk.headers, 'if-match': String(headers['etag']) }, payload: { name, partnerId, sensitivity, note: `${String(note)} and more` },
  });
  const log = () => api.app.inject({ method: 'POST', url: '/api/v1/programmes/harrowdale/entries', headers: desk.headers, payload: { entries: [counted] } });
  await asOwner(api, async (sql) => {
    await sql.query('BEGIN');
    await sql.query(LOCK_ALL, locksOf(place.programmeId));
    const answers = await Promise.all([change(), log()]);
    await sql.query('ROLLBACK');
    for (const answer of answers) {
      expect([answer.statusCode, answer.json<{ type: string }>().type]).toEqual([503, '/problems/http/busy']);
      expect(Number(answer.headers['retry-after'])).toBeGreaterThan(0);
    }
  });
  expect((await desk.get(`stands/${place.standId}`)).headers['etag']).toBe(headers['etag']);
  expect((await change()).statusCode).toBe(200);
  expect((await log()).json()).toMatchObject({ entries: [{ status: 'written' }] });
}, 30_000);
