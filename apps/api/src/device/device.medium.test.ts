import type { Device } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { asOwner, type Member, member, newId } from '../../../../test/support/people.ts';

let now = new Date('2026-03-02T10:00:00Z');
const later = (hours: number): void => void (now = new Date(now.getTime() + hours * 3_600_000));
const api = await testApi({ presentTime: () => now });
const [coordinator, volunteer, other] = [await member(api, 'coordinator'), await member(api, 'volunteer'), await member(api, 'volunteer')];

const BASE = '/api/v1/programmes/harrowdale/devices';
const NOTHING = { name: null, unsent: 0, oldestUnsentOn: null, app: null };
const ask = (method: 'GET' | 'POST' | 'PUT', path: string, who: Member, payload?: object) => api.app.inject({ method, url: `${BASE}${path}`, headers: who.headers, ...(payload && { payload }) });
async function tell(id: string, told: object, who = volunteer): Promise<void> {
  const answer = await ask('PUT', `/${id}`, who, { ...NOTHING, ...told });
  expect(answer.statusCode, answer.body).toBe(204);
}
const seenBy = async (who: Member): Promise<Device[]> => (await ask('GET', '', who)).json();
const one = async (id: string, who = coordinator): Promise<Device | undefined> => (await seenBy(who)).find((device) => device.id === id);

test('what was unsent when a phone was last heard is told as stuck after a day, with whose it was and since when', async () => {
  const phone = newId();
  await tell(phone, { name: 'Bench tablet', unsent: 4, oldestUnsentOn: '2026-03-01', app: 'b1' });
  later(24);
  expect((await one(phone))?.isSilent).toBe(false);
  later(0.01);
  expect(await one(phone)).toMatchObject({
    name: 'Bench tablet', unsent: 4, oldestUnsentOn: '2026-03-01', app: 'b1', isSilent: true, packedAt: null, setAside: null,
    firstHeardAt: '2026-03-02T10:00:00.000Z', lastHeardAt: '2026-03-02T10:00:00.000Z',
  });
  await tell(phone, {});
  later(48);
  expect(await one(phone)).toMatchObject({ unsent: 0, isSilent: false, firstHeardAt: '2026-03-02T10:00:00.000Z' });
});

test('a phone that is heard tells its entries as stuck all the same, once they are older than yesterday', async () => {
  const phone = newId();
  const day = (ago: number): string => new Date(now.getTime() - ago * 86_400_000).toISOString().slice(0, 10);
  const stuckSince = async (oldestUnsentOn: string): Promise<unknown> => {
    await tell(phone, { unsent: 3, oldestUnsentOn });
    const { isStuck, isSilent } = (await one(phone)) ?? {};
    return { isStuck, isSilent };
  };
  expect(await stuckSince(day(6))).toEqual({ isStuck: true, isSilent: false });
  expect(await stuckSince(day(2))).toEqual({ isStuck: true, isSilent: false });
  expect(await stuckSince(day(1))).toEqual({ isStuck: false, isSilent: false });
  await stuckSince(day(6));
  expect((await ask('POST', `/${phone}/setting-aside`, coordinator, { reason: 'sold' })).statusCode).toBe(204);
  expect((await one(phone))?.isStuck).toBe(false);
});

test('a phone that took a walk along and was never heard since may hold entries, too; one that was heard does not', async () => {
  const [silent, heard] = [newId(), newId()];
  await tell(silent, { hasPacked: true });
  await tell(heard, { hasPacked: true });
  later(1);
  await tell(heard, {});
  later(25);
  expect([(await one(silent))?.isSilent, (await one(heard))?.isSilent]).toEqual([true, false]);
  expect((await seenBy(coordinator))[0]?.id).toBe(silent);
});

test('a volunteer is told of the phones they were last signed in on, and of no other', async () => {
  const [mine, theirs] = [newId(), newId()];
  await tell(mine, {}, other);
  await tell(theirs, {});
  expect((await seenBy(other)).map(({ id }) => id)).toEqual([mine]);
  // Somebody else signs in on it.
  await tell(mine, {});
  expect(await seenBy(other)).toEqual([]);
});

test('put aside with a reason, once, written down; and back by itself when it is heard', async () => {
  const phone = newId();
  await tell(phone, { unsent: 1, oldestUnsentOn: '2026-03-05' });
  later(30);
  expect((await ask('POST', `/${phone}/setting-aside`, volunteer, { reason: 'lost' })).statusCode).toBe(403);
  for (const reason of ['fell into the beck', 'another']) expect((await ask('POST', `/${phone}/setting-aside`, coordinator, { reason })).statusCode).toBe(204);
  expect(await one(phone)).toMatchObject({ isSilent: false, setAside: { reason: 'fell into the beck' } });
  const trail = await asOwner(api, async (sql) => (await sql.query<{ act: string; facts: object }>('SELECT act, facts FROM audit WHERE subject_id = $1', [phone])).rows);
  expect(trail).toEqual([{ act: 'device.set-aside', facts: { reason: 'fell into the beck' } }]);

  await tell(phone, { unsent: 1, oldestUnsentOn: '2026-03-05' });
  later(30);
  expect(await one(phone)).toMatchObject({ isSilent: true, setAside: null });
});

test.each([
  ['entries that are stuck since no day', { unsent: 2 }],
  ['a day without entries', { oldestUnsentOn: '2026-03-01' }],
  ['fewer than none', { unsent: -1 }],
])('refuses %s', async (_, told) => {
  const answer = await ask('PUT', `/${newId()}`, volunteer, { ...NOTHING, ...told });
  expect([answer.statusCode, answer.json().type]).toEqual([422, '/problems/http/unfit-request']);
});

test('one that was never heard cannot be put aside, and another programme sees none', async () => {
  const answer = await ask('POST', `/${newId()}/setting-aside`, coordinator, { reason: 'lost' });
  expect([answer.statusCode, answer.json().type]).toEqual([404, '/problems/device/unknown']);
  const outside = await member(api, 'owner', 'winterbeck');
  const theirs = await api.app.inject({ method: 'GET', url: '/api/v1/programmes/winterbeck/devices', headers: outside.headers });
  expect(theirs.json()).toEqual([]);
});
