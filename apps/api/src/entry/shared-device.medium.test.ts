import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

/** A device that several people log on is signed in as one of them. */
const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const tablet = desk.as(place.volunteer);
const other = await member(api, 'volunteer');
const { batchId } = await desk.stick(30);
const died = (n: number, more: Record<string, unknown> = {}) => desk.entry('2026-02-01', { kind: 'died', batchId, n, cause: 'dry' }, more);
const authorOf = (id: string) => asOwner(api, async (sql) => (await sql.query<{ written_by: string; seen_by: string; author_unverified: boolean }>('SELECT written_by, seen_by, author_unverified FROM entry WHERE id = $1', [id])).rows[0]);

test('each entry keeps the author it was written under', async () => {
  const entry = died(1, { writtenBy: other.personId });
  const [item] = await tablet.write([entry], { door: 'outbox' });
  expect(item?.status).toBe('written');
  expect(await authorOf(entry.id)).toEqual({ written_by: other.personId, seen_by: other.personId, author_unverified: false });
  // Whoever brings it a second time brings the same.
  expect((await desk.write([entry], { door: 'outbox' }))[0]?.status).toBe('already');
});

test('only an outbox tells of another author, and only of one there is', async () => {
  const atDesk = await desk.post('entries', { entries: [died(1, { writtenBy: other.personId })] });
  expect(atDesk.status).toBe(422);
  const [item] = await tablet.write([died(1, { writtenBy: newId() })], { door: 'outbox' });
  expect(item?.problem?.type).toBe('/problems/entry/names-unknown-record');
});

test('an author who has left is a claim: kept for a look, and out of the books', async () => {
  const gone = await member(api, 'volunteer');
  await asOwner(api, (sql) => sql.query('UPDATE person SET left_at = now() WHERE id = $1', [gone.personId]));
  const entry = died(2, { writtenBy: gone.personId });
  const [item] = await tablet.write([entry], { door: 'outbox' });
  expect(item?.flags.map(({ code }) => code)).toContain('author-unverified');
  expect(await authorOf(entry.id)).toMatchObject({ author_unverified: true });
});

test('what somebody wrote on the device they take back there; the claim opens nothing that came elsewhere', async () => {
  const here = died(1, { writtenBy: other.personId });
  await tablet.write([here], { door: 'outbox' });
  const takesBack = (id: string) => desk.entry('2026-02-01', { kind: 'withdrawn', entryId: id, sawVersion: id, reason: 'a slip' }, { writtenBy: other.personId });
  expect((await tablet.write([takesBack(here.id)], { door: 'outbox' }))[0]?.status).toBe('written');

  const elsewhere = died(1);
  await desk.as(other).write([elsewhere]);
  expect((await tablet.write([takesBack(elsewhere.id)], { door: 'outbox' }))[0]?.problem?.type).toBe('/problems/entry/not-yours');
});
