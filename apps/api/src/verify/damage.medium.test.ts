import { rebuildProjections, verify } from '@sprigline/api';
import pg from 'pg';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const other = await nursery(api, 'elsewhere');
const liner = newId();
const died = desk.entry('2026-01-10', { kind: 'died', batchId: '', n: 6, cause: 'dry' });
let tray: { batchId: string; stickingId: string; entryId: string };

beforeAll(async () => {
  tray = await desk.stick(60);
  const second = await desk.stick(30, { bundleId: place.bundles[1] });
  const mixture = newId();
  died.saying['batchId'] = tray.batchId;
  await desk.write([
    died,
    desk.entry('2026-02-01', { kind: 'counted', batchId: tray.batchId, alive: 52, look: 'tug', rooted: 20 }),
    desk.entry('2026-03-01', { kind: 'lifted', batchId: tray.batchId, toBatchId: liner, n: 20, placeId: place.trays[1] }),
    desk.entry('2026-04-01', { kind: 'planted', batchId: liner, toBatchId: newId(), n: 5, placeId: place.plot }),
    desk.entry('2026-05-01', { kind: 'mixed', toBatchId: mixture, placeId: place.trays[2], parts: [{ batchId: tray.batchId, n: 3 }, { batchId: second.batchId, n: 3 }] }),
    desk.entry('2026-05-02', { kind: 'identified', batchId: mixture, stickingId: second.stickingId, toBatchId: newId(), n: 1, placeId: place.trays[2] }),
    desk.entry('2026-05-03', { kind: 'restuck', batchId: tray.batchId, n: 4, toBatchId: newId(), stickingId: newId(), placeId: place.trays[1] }),
    desk.entry('2026-05-04', { kind: 'givenOut', batchId: tray.batchId, n: 2, partnerId: place.partnerId, toBatchId: newId(), placeId: place.house }),
  ]);
  await desk.write([desk.entry('2026-06-01', { kind: 'withdrawn', entryId: newId(), sawVersion: newId(), reason: 'another phone' })], { door: 'outbox' });
});

/** As somebody who may do everything, with all triggers off; undone after the test. */
async function damage(statement: string, values: unknown[], undo: string): Promise<void> {
  const client = new pg.Client({ connectionString: api.database.superuser });
  await client.connect();
  await client.query('SET session_replication_role = replica');
  const { rows } = await client.query(statement, values);
  if (rows.length === 0) throw new Error('the damage hit nothing');
  mend = async () => {
    await client.query(undo, [JSON.stringify(rows)]);
    await client.end();
  };
}
let mend: (() => Promise<void>) | undefined;
afterEach(async () => {
  await mend?.();
  mend = undefined;
});

const sentences = async () => (await verify(api.database)).map(({ sentence }) => sentence);

test('finds nothing where nothing is wrong, mixtures, gifts and waiting entries included', async () => {
  expect(await verify(api.database)).toEqual([]);
});

describe('on a database damaged on purpose, names', () => {
  test('an entry that was deleted', async () => {
    await damage('DELETE FROM entry WHERE id = $1 RETURNING *', [died.id], 'INSERT INTO entry SELECT * FROM json_populate_recordset(NULL::entry, $1)');
    const found = await sentences();
    expect(found).toContain(`The entry_touch of batch ${tray.batchId} names the entry ${died.id}, which is not there (entry_touch_is_by_an_entry).`);
    expect(found.some((sentence) => sentence.startsWith(`The movement of batch ${tray.batchId} does not follow from its entries`))).toBe(true);
  });

  test('an entry that was deleted with all that points to it', async () => {
    await damage(
      'WITH t AS (DELETE FROM entry_touch WHERE entry_id = $1 RETURNING *), m AS (DELETE FROM movement WHERE entry_id = $1), d AS (DELETE FROM entry WHERE id = $1 RETURNING *) SELECT d.* FROM d',
      [died.id],
      `WITH e AS (INSERT INTO entry SELECT * FROM json_populate_recordset(NULL::entry, $1) RETURNING *)
       INSERT INTO entry_touch SELECT programme_id, '${tray.batchId}', id FROM e`,
    );
    expect(await sentences()).toContain(`The batch ${tray.batchId} holds 23 plants by its balance and 29 by its movements.`);
    await mend?.();
    mend = undefined;
    await rebuildProjections(api.database);
  });

  test('a balance that was edited', async () => {
    await damage('UPDATE batch_state SET balance = balance + 7 WHERE batch_id = $1 RETURNING *', [liner], 'UPDATE batch_state SET balance = balance - 7 WHERE batch_id = ($1::json -> 0 ->> \'batch_id\')::uuid');
    const found = await sentences();
    expect(found).toContain(`The batch ${liner} holds 22 plants by its balance and 15 by its movements.`);
    expect(found).toContain(`The sticking ${tray.stickingId} began with 60 plants, and 67 are here or have ended.`);
  });

  test('a parent that is not there, and one that its entry does not tell of', async () => {
    const nobody = newId();
    const undo = `UPDATE batch SET parent_id = '${tray.batchId}' WHERE id = ($1::json -> 0 ->> 'id')::uuid`;
    await damage('UPDATE batch SET parent_id = $2 WHERE id = $1 RETURNING id', [liner, nobody], undo);
    const found = await sentences();
    expect(found).toContain(`The batch with id ${liner} names the batch ${nobody}, which is not there (batch_comes_from_a_batch).`);
    expect(found).toContain(`The batch ${liner} says that it comes from ${nobody}, the entry that opened it says ${tray.batchId}.`);
  });

  test('a batch that is its own ancestor', async () => {
    await damage('UPDATE batch SET parent_id = $2 WHERE id = $1 RETURNING id', [tray.batchId, liner], `UPDATE batch SET parent_id = NULL WHERE id = ($1::json -> 0 ->> 'id')::uuid`);
    expect(await sentences()).toEqual(expect.arrayContaining([`The batch ${tray.batchId} is its own ancestor.`, `The batch ${liner} is its own ancestor.`]));
  });

  test('an id of another programme', async () => {
    await damage('UPDATE batch_state SET place_id = $2 WHERE batch_id = $1 RETURNING *', [liner, other.trays[0]], `UPDATE batch_state SET place_id = '${place.trays[1]}' WHERE batch_id = ($1::json -> 0 ->> 'batch_id')::uuid`);
    expect(await sentences()).toContain(
      `The batch_state of batch ${liner} names the place ${other.trays[0]}, which is of another programme (batch_state_is_at_a_place).`,
    );
  });

  test('a tally that was edited', async () => {
    await damage(`UPDATE tally SET died = died + 1, here = here - 1 WHERE sticking_id = $1 AND stage = 'liner' RETURNING *`, [tray.stickingId], `UPDATE tally SET died = died - 1, here = here + 1 WHERE sticking_id = ($1::json -> 0 ->> 'sticking_id')::uuid AND stage = 'liner'`);
    expect(await sentences()).toContain(`The tally of sticking ${tray.stickingId} at stage liner says came_in 20, died 1, gone_on 5, here 14, its entries say came_in 20, gone_on 5, here 15.`);
  });

  test('an entry that is filed nowhere', async () => {
    await damage('DELETE FROM entry_touch WHERE entry_id = $1 RETURNING *', [died.id], 'INSERT INTO entry_touch SELECT * FROM json_populate_recordset(NULL::entry_touch, $1)');
    expect(await sentences()).toContain(`The entry ${died.id} speaks of the batch ${tray.batchId} and is not filed there.`);
  });

  test('a guard that is switched off', async () => {
    const client = new pg.Client({ connectionString: api.database.superuser });
    await client.connect();
    await client.query('ALTER TABLE entry DISABLE TRIGGER entry_is_never_rewritten');
    expect(await sentences()).toEqual(['The trigger entry_is_never_rewritten on entry is switched off.']);
    await client.query('ALTER TABLE entry ENABLE TRIGGER entry_is_never_rewritten');
    await client.end();
  });
});

test('rebuilding mends everything that follows from the entries', async () => {
  const client = new pg.Client({ connectionString: api.database.superuser });
  await client.connect();
  await client.query('SET session_replication_role = replica');
  await client.query('UPDATE movement SET n = n + 1; DELETE FROM stay; DELETE FROM tally; UPDATE batch_state SET balance = 1, rooted_now = NULL; DELETE FROM batch_partner');
  await client.end();
  expect((await verify(api.database)).length).toBeGreaterThan(10);

  expect(await rebuildProjections(api.database)).toBeGreaterThan(5);
  expect(await verify(api.database)).toEqual([]);
});
