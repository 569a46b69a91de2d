import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const volunteer = desk.as(place.volunteer);

const problem = (code: string, status: number) => ({ status: 'refused', problem: { type: `/problems/${code}`, status } });
const say = async (saying: Record<string, unknown>, day = '2026-03-01', who = desk) => (await who.write([who.entry(day, saying)]))[0];

describe('malformed is 422 at every door', () => {
  test.each([
    ['rooted and callused above alive', { kind: 'counted', alive: 5, look: 'lifted', rooted: 4, callused: 2, dead: [] }, '/entries/0/saying/rooted'],
    ['a negative number', { kind: 'died', n: -1, cause: 'dry' }, '/entries/0/saying/n'],
    ['part of a plant', { kind: 'found', n: 1.5, reason: 'x' }, '/entries/0/saying/n'],
    ['a sample smaller than what lives in it', { kind: 'counted', alive: 9, sampleOf: 5, look: 'look' }, '/entries/0/saying/alive'],
  ])('%s', async (_, saying, pointer) => {
    const { status, body } = await desk.post('entries', { door: 'outbox', entries: [desk.entry('2026-03-01', { batchId: newId(), ...saying })] });
    expect(status).toBe(422);
    expect(new Set(body.errors.map((fault: { pointer: string }) => fault.pointer))).toEqual(new Set([`#${pointer}`]));
  });

  test('a stage gone back', async () => {
    const batchId = newId();
    await say({ kind: 'received', batchId, stickingId: newId(), stage: 'potted', n: 5, source: 'opening', donorTreeId: place.donors[0], placeId: place.bench });
    const entry = desk.entry('2026-04-01', { kind: 'lifted', batchId, toBatchId: newId(), n: 1, placeId: place.bench });
    for (const door of ['desk', 'outbox']) expect((await desk.write([entry], { door }))[0]).toMatchObject(problem('ledger/stage-gone-back', 422));
  });
});

describe('one refused entry, in the order in which rules are asked', () => {
  test('the id of another entry, before anything else', async () => {
    const { batchId, entryId } = await desk.stick(10);
    const [item] = await desk.write([desk.entry('2026-03-01', { kind: 'died', batchId, n: 99, cause: 'dry' }, { id: entryId, seenBy: newId() })]);
    expect(item).toMatchObject(problem('entry/id-reused', 422));
  });

  test('a record that is not there, before the batch', async () => {
    expect(await say({ kind: 'moved', batchId: newId(), placeId: newId() })).toMatchObject({ ...problem('entry/names-unknown-record', 422), problem: { facts: { as: 'placeId' } } });
  });

  test('a place of another programme is not there', async () => {
    const other = await nursery(api, 'elsewhere');
    const { batchId } = await desk.stick(10);
    expect(await say({ kind: 'moved', batchId, placeId: other.bench })).toMatchObject(problem('entry/names-unknown-record', 422));
  });

  test('an unknown batch or entry', async () => {
    expect(await say({ kind: 'died', batchId: newId(), n: 1, cause: 'dry' })).toMatchObject(problem('batch/unknown', 404));
    const nobody = newId();
    expect(await say({ kind: 'withdrawn', entryId: nobody, sawVersion: nobody, reason: 'x' })).toMatchObject(problem('entry/unknown', 404));
  });

  test('another kind, before whose it is', async () => {
    const { batchId, entryId } = await desk.stick(10);
    const instead = { observedOn: '2026-03-01', saying: { kind: 'died', batchId, n: 1, cause: 'dry' } };
    const item = await say({ kind: 'replaced', entryId, sawVersion: entryId, reason: 'x', instead }, '2026-03-01', volunteer);
    expect(item).toMatchObject(problem('entry/kind-changed', 422));
  });

  test("somebody else's entry, for a volunteer; their own only for a day", async () => {
    const { batchId, entryId } = await desk.stick(10);
    const withdraw = (id: string) => say({ kind: 'withdrawn', entryId: id, sawVersion: id, reason: 'x' }, '2026-03-02', volunteer);
    expect(await withdraw(entryId)).toMatchObject(problem('entry/not-yours', 403));

    const [own, late] = [1, 2].map(() => volunteer.entry('2026-03-01', { kind: 'died', batchId, n: 1, cause: 'dry' }));
    await volunteer.write([own!, late!]);
    expect(await withdraw(own!.id)).toMatchObject({ status: 'written' });
    await asOwner(api, (sql) => sql.query(`ALTER TABLE entry DISABLE TRIGGER entry_is_never_rewritten; UPDATE entry SET received_at = received_at - interval '25 hours' WHERE id = '${late!.id}'; ALTER TABLE entry ENABLE TRIGGER entry_is_never_rewritten`));
    expect(await withdraw(late!.id)).toMatchObject(problem('entry/not-yours', 403));
  });

  test('a version that somebody corrected meanwhile', async () => {
    const { entryId } = await desk.stick(10);
    const withdraw = () => say({ kind: 'withdrawn', entryId, sawVersion: entryId, reason: 'x' });
    expect([await withdraw(), await withdraw()]).toMatchObject([{ status: 'written' }, problem('entry/corrected-meanwhile', 409)]);
  });

  test('a code for a label with a wrong character in it, at every door; a label of somebody’s own passes', async () => {
    const { batchId } = await desk.stick(10);
    for (const door of ['desk', 'outbox'] as const) {
      const part = (label: string) => desk.entry('2026-03-01', { kind: 'moved', batchId, toBatchId: newId(), n: 1, placeId: place.bench, label });
      const mistyped = part('k58y 9j68');
      expect(await desk.write([mistyped, part(`${door} 2345`)], { door })).toMatchObject([problem('label/mistyped', 422), { status: 'written' }]);
      // Nothing of it was kept, so the same entry is told anew with the label that was meant.
      expect(await desk.write([{ ...mistyped, saying: { ...(mistyped['saying'] as object), label: door === 'desk' ? 'K58Y9J69' : '24PFJ628' } }], { door })).toMatchObject([{ status: 'written' }]);
    }
  });

  test('plants of another sticking, a label used before', async () => {
    const [one, two] = [await desk.stick(10, { label: 'A-1' }), await desk.stick(10)];
    expect(await say({ kind: 'moved', batchId: one.batchId, toBatchId: two.batchId, n: 3, placeId: place.bench })).toMatchObject(problem('batch/other-sticking', 422));
    expect(await say({ kind: 'moved', batchId: one.batchId, toBatchId: newId(), n: 3, placeId: place.bench, label: 'A-1' })).toMatchObject(problem('batch/label-taken', 409));
  });

  test('more than there are, with the numbers', async () => {
    const { batchId } = await desk.stick(10);
    expect(await say({ kind: 'died', batchId, n: 12, cause: 'dry' })).toMatchObject({
      ...problem('entry/needs-another-look', 409),
      problem: { facts: { there: 10, n: 2 }, discrepancies: [{ code: 'took-more', batchId, there: 10, n: 2 }] },
    });
  });

  test('later entries that would not add up any more: listed, and taken when confirmed', async () => {
    const { batchId } = await desk.stick(10);
    const later = desk.entry('2026-05-01', { kind: 'lifted', batchId, toBatchId: newId(), n: 8, placeId: place.bench });
    const early = desk.entry('2026-04-01', { kind: 'died', batchId, n: 4, cause: 'dry' });
    await desk.write([later]);
    expect((await desk.write([early]))[0]).toMatchObject({ ...problem('entry/breaks-later-ones', 409), problem: { discrepancies: [{ entryId: later.id, n: 2, there: 6 }] } });
    expect((await desk.write([early], { confirm: [early.id] }))[0]).toMatchObject({ status: 'written' });
  });

  test('held plants stay where they are at the desk, and are flagged from outside', async () => {
    const { batchId } = await desk.stick(10);
    await say({ kind: 'held', batchId, reason: 'spots' });
    const entry = desk.entry('2026-03-02', { kind: 'moved', batchId, placeId: place.trays[1] });
    expect((await desk.write([entry]))[0]).toMatchObject(problem('batch/held', 409));
    expect((await desk.write([entry], { door: 'outbox' }))[0]).toMatchObject({ status: 'written', flags: [{ code: 'held-moved' }] });
  });
});

describe('many entries in one request', () => {
  test('a bad one does not keep the others out, and later ones may name what earlier ones opened', async () => {
    const [batchId, toBatchId] = [newId(), newId()];
    const items = await desk.write([
      desk.entry('2025-10-02', { kind: 'stuck', batchId, stickingId: newId(), n: 10, placeId: place.trays[0], bundleId: place.bundles[0] }),
      desk.entry('2026-03-01', { kind: 'died', batchId, n: 50, cause: 'dry' }),
      desk.entry('2026-03-02', { kind: 'lifted', batchId, toBatchId, n: 4, placeId: place.bench }),
      desk.entry('2026-03-03', { kind: 'died', batchId: toBatchId, n: 1, cause: 'dry' }),
    ]);
    expect(items.map(({ status }) => status)).toEqual(['written', 'refused', 'written', 'written']);
    expect((await desk.get(`batches/${toBatchId}`)).body.balance).toBe(3);
  });

  test('sent twice it changes nothing, whatever door and clock', async () => {
    const { batchId } = await desk.stick(10);
    const entry = desk.entry('2026-03-01', { kind: 'died', batchId, n: 2, cause: 'dry' });
    const again = { ...entry, writtenAt: '2026-03-09T10:00:00Z' };
    const statuses = async (entries: object[], door: string) => (await desk.write(entries, { door })).map(({ status }) => status);
    expect([await statuses([entry, entry], 'desk'), await statuses([again], 'outbox')]).toEqual([['written', 'already'], ['already']]);
    expect((await desk.get(`batches/${batchId}`)).body.balance).toBe(8);
  });

  test('a preview says what the books would make of it and writes nothing', async () => {
    const { batchId } = await desk.stick(10);
    const { body } = await desk.post('entries/preview', { entries: [desk.entry('2026-03-01', { kind: 'counted', batchId, alive: 7, look: 'look', dead: [{ n: 2, cause: 'rot' }] })] });
    expect(body).toMatchObject({
      entries: [{ status: 'written' }],
      batches: [{ batchId, before: { balance: 10 }, after: { balance: 7 }, movements: [{ effect: 'died', n: 2 }, { effect: 'unaccounted', n: 1 }] }],
    });
    expect((await desk.get(`batches/${batchId}`)).body.balance).toBe(10);
  });
});

describe('what comes before what it names', () => {
  test('waits, and takes effect when that arrives, through several steps', async () => {
    const [batchId, toBatchId] = [newId(), newId()];
    const died = desk.entry('2026-03-03', { kind: 'died', batchId: toBatchId, n: 1, cause: 'dry' });
    const mended = desk.entry('2026-03-04', { kind: 'replaced', entryId: died.id, sawVersion: died.id, reason: 'two', instead: { observedOn: '2026-03-03', saying: { ...died.saying, n: 2 } } });
    const lifted = desk.entry('2026-03-02', { kind: 'lifted', batchId, toBatchId, n: 4, placeId: place.bench });
    const statuses = async (entries: object[]) => (await volunteer.write(entries, { door: 'outbox' })).map(({ status }) => status);
    expect([await statuses([mended]), await statuses([died]), await statuses([lifted]), await statuses([died])]).toEqual([['waiting'], ['waiting'], ['waiting'], ['waiting']]);

    const stuck = desk.entry('2025-10-02', { kind: 'stuck', batchId, stickingId: newId(), n: 10, placeId: place.trays[0], bundleId: place.bundles[0] });
    expect(await statuses([stuck])).toEqual(['written']);
    expect((await desk.get(`batches/${toBatchId}`)).body).toMatchObject({ balance: 2, history: [{ kind: 'lifted' }, { id: died.id, now: { said: { n: 2 } } }] });
    expect(await statuses([died])).toEqual(['already']);
  });

  test('a correction that takes plants to a batch not there yet leaves them where they were until it comes', async () => {
    const [{ batchId }, toBatchId] = [await desk.stick(10), newId()];
    const died = desk.entry('2026-03-01', { kind: 'died', batchId, n: 4, cause: 'dry' });
    const mended = desk.entry('2026-03-05', { kind: 'replaced', entryId: died.id, sawVersion: died.id, reason: 'the other tray', instead: { observedOn: '2026-03-03', saying: { ...died.saying, batchId: toBatchId } } });
    await desk.write([died, mended], { door: 'outbox' });
    const balance = async () => (await desk.get(`batches/${batchId}`)).body.balance;
    expect(await balance()).toBe(6);
    await say({ kind: 'lifted', batchId, toBatchId, n: 5, placeId: place.bench }, '2026-03-02');
    expect(await balance()).toBe(5);
    expect((await desk.get(`batches/${toBatchId}`)).body.balance).toBe(1);
  });

  test('within one request its order does not matter from an outbox', async () => {
    const batchId = newId();
    const items = await desk.write([
      desk.entry('2026-03-03', { kind: 'died', batchId, n: 1, cause: 'dry' }),
      desk.entry('2025-10-02', { kind: 'stuck', batchId, stickingId: newId(), n: 10, placeId: place.trays[0], bundleId: place.bundles[0] }),
    ], { door: 'outbox' });
    expect(items.map(({ status }) => status)).toEqual(['written', 'written']);
  });

  test("a volunteer cannot slip a correction of somebody else's entry in before it", async () => {
    const batchId = newId();
    const stuck = desk.entry('2025-10-02', { kind: 'stuck', batchId, stickingId: newId(), n: 10, placeId: place.trays[0], bundleId: place.bundles[0] });
    await volunteer.write([volunteer.entry('2026-01-01', { kind: 'withdrawn', entryId: stuck.id, sawVersion: stuck.id, reason: 'x' })], { door: 'outbox' });
    await desk.write([stuck]);
    expect((await desk.get(`batches/${batchId}`)).body.balance).toBe(10);
  });
});

test('what a phone brings for somebody who has left stays out of the books', async () => {
  const gone = await member(api, 'volunteer');
  await asOwner(api, (sql) => sql.query('UPDATE person SET left_at = now() WHERE id = $1', [gone.personId]));
  const { batchId } = await desk.stick(10);
  const [item] = await desk.write([desk.entry('2026-03-01', { kind: 'died', batchId, n: 2, cause: 'dry' }, { seenBy: gone.personId })], { door: 'outbox' });
  expect(item).toMatchObject({ status: 'written', flags: [{ code: 'author-unverified' }] });
  expect((await desk.get(`batches/${batchId}`)).body.balance).toBe(10);
});
