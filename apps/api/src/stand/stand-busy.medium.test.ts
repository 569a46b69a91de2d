// A record that changes hands waits for the ledger, and a sheet of thousands of rows may hold it for long.
import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner } from '../../../../test/support/people.ts';
import { LOCK_ALL, locksOf } from '../entry/pages/locks.queries.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const address = `/api/v1/programmes/harrowdale/stands/${place.standId}`;

test('while a sheet is written, a change of a stand is told to come again, and changes nothing', async () => {
  const { headers, body } = await desk.get(`stands/${place.standId}`);
  const { name, partnerId, sensitivity, note } = body as Record<string, unknown>;
  const change = () => api.app.inject({
    method: 'PUT', url: address, headers: { ...desk.headers, 'if-match': String(headers['etag']) }, payload: { name, partnerId, sensitivity, note: `${String(note)} and more` },
  });
  await asOwner(api, async (sql) => {
    await sql.query('BEGIN');
    await sql.query(LOCK_ALL, locksOf(place.programmeId));
    const answer = await change();
    await sql.query('ROLLBACK');
    expect([answer.statusCode, answer.json<{ type: string }>().type]).toEqual([503, '/problems/http/busy']);
    expect(Number(answer.headers['retry-after'])).toBeGreaterThan(0);
  });
  expect((await desk.get(`stands/${place.standId}`)).headers['etag']).toBe(headers['etag']);
  expect((await change()).statusCode).toBe(200);
}, 30_000);
