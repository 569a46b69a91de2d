import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

const balance = async (batchId: string) => (await desk.get(`batches/${batchId}`)).body.balance as number;

/** A tray of 30 taken apart: 14 lifted, 9 put back, 5 dead, 1 thrown out; 1 nobody has seen. */
async function sorting(label: string, onwards: Record<string, unknown> = {}) {
  const { batchId } = await desk.stick(30);
  const at = { minute: 615 };
  return {
    batchId,
    entries: [
      desk.entry('2026-03-01', { kind: 'counted', batchId, alive: 24, look: 'lifted', dead: [{ n: 3, cause: 'black base' }, { n: 2, cause: 'chewed' }] }, { ...at, line: 1 }),
      desk.entry('2026-03-01', { kind: 'thrownOut', batchId, n: 1, reason: 'broken' }, { ...at, line: 2 }),
      desk.entry('2026-03-01', { kind: 'lifted', batchId, n: 14, toBatchId: newId(), placeId: place.bench, label, ...onwards }, { ...at, line: 3 }),
    ],
  };
}

test('entries of one act are written together, and sent again change nothing', async () => {
  const { batchId, entries } = await sorting('S-1');
  const send = async () => (await desk.post('entries', { entries, together: true })).body.entries.map(({ status }: { status: string }) => status);

  expect(await send()).toEqual(['written', 'written', 'written']);
  expect(await balance(batchId)).toBe(9);
  expect(await send()).toEqual(['already', 'already', 'already']);
  expect(await balance(batchId)).toBe(9);
});

test('one that is refused keeps the others out: no entry, no batch, no label', async () => {
  const { entries: taken } = await sorting('S-2');
  await desk.write(taken);
  const { batchId, entries } = await sorting('S-2');
  const { body } = await desk.post('entries', { entries, together: true });

  expect(body.entries.map(({ problem }: { problem: { type: string } }) => problem.type)).toEqual([
    '/problems/entry/one-was-refused', '/problems/entry/one-was-refused', '/problems/batch/label-taken',
  ]);
  expect(await balance(batchId)).toBe(30);
  const kept = await asOwner(api, (sql) => sql.query('SELECT id FROM entry WHERE id = ANY ($1)', [entries.map(({ id }) => id)]));
  expect(kept.rows).toEqual([]);

  // Mended and sent again under the same ids, all of it is written.
  const mended = entries.map((entry) => (entry.saying['label'] ? { ...entry, saying: { ...entry.saying, label: 'S-3' } } : entry));
  expect((await desk.post('entries', { entries: mended, together: true })).body.entries.map(({ status }: { status: string }) => status)).toEqual(['written', 'written', 'written']);
  expect(await balance(batchId)).toBe(9);
});

test('told each for itself, one that is refused keeps no other out', async () => {
  const { entries: taken } = await sorting('S-4');
  await desk.write(taken);
  const { entries } = await sorting('S-4');

  expect((await desk.write(entries)).map(({ status }) => status)).toEqual(['written', 'written', 'refused']);
});

test('more on the bench than in the books is refused whole, until it is said that plants were found', async () => {
  const { batchId } = await desk.stick(10);
  const count = desk.entry('2026-03-02', { kind: 'counted', batchId, alive: 12, look: 'lifted' }, { minute: 600, line: 2 });
  const lift = desk.entry('2026-03-02', { kind: 'lifted', batchId, n: 12, toBatchId: newId(), placeId: place.bench, leavesNone: true }, { minute: 600, line: 3 });
  const refused = await desk.post('entries', { entries: [count, lift], together: true });
  expect(refused.body.entries[0].problem).toMatchObject({ type: '/problems/entry/needs-another-look', discrepancies: [{ code: 'found-by-count', there: 10, n: 2 }] });
  expect(await balance(batchId)).toBe(10);

  const found = desk.entry('2026-03-02', { kind: 'found', batchId, n: 2, reason: 'two in one hole' }, { minute: 600, line: 1 });
  expect((await desk.post('entries', { entries: [found, count, lift], together: true })).body.entries.map(({ status }: { status: string }) => status)).toEqual(['written', 'written', 'written']);
  expect(await balance(batchId)).toBe(0);
});

test('carried to where it stands apart and held there is one act, in the order of its lines', async () => {
  const { batchId } = await desk.stick(12);
  const [carry, hold] = [
    { kind: 'moved', batchId, placeId: place.bench },
    { kind: 'held', batchId, reason: 'spots on two leaves' },
  ];
  const send = async (first: Record<string, unknown>, second: Record<string, unknown>) => {
    const entries = [desk.entry('2026-03-03', first, { line: 1 }), desk.entry('2026-03-03', second, { line: 2 })];
    return (await desk.post('entries', { entries, together: true })).body.entries;
  };
  expect((await send(hold, carry)).map(({ status }: { status: string }) => status)).toEqual(['refused', 'refused']);
  expect((await send(carry, hold)).map(({ status, flags }: { status: string; flags?: unknown[] }) => [status, flags])).toEqual([['written', []], ['written', []]]);
  expect((await desk.get(`batches/${batchId}`)).body).toMatchObject({ balance: 12, place: { id: place.bench }, held: true });
});
