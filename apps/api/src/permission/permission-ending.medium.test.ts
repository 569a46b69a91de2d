import { beforeEach, expect, test } from 'vitest';
import { PermissionEnding } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { member, signedIn } from '../../../../test/support/people.ts';

const api = await testApi({ presentTime: () => new Date('2026-03-01T12:00:00Z') });
let build: Build;
let count = 0;
beforeEach(async () => {
  count += 1;
  const programme = `ending-${count}`;
  build = new Build(new Asker(api, await signedIn(api, 'coordinator', programme), programme));
});

const ending = async () => PermissionEnding.array().parse((await build.ask.get('permissions/ending')).body);

/** A permission of so many cuttings, of which some are taken. */
async function usedUp(quota: number, taken: number, more: Parameters<Build['permission']>[0] = {}) {
  const tree = await build.donorTree();
  const permission = await build.permission({ standId: tree.standId, quota, ...more });
  await build.trip({ standId: tree.standId, permissionId: permission.id, bundles: [build.bundle(tree.id, taken)] });
  return permission;
}

test.each([['2026-04-30', 1], ['2026-05-01', 0], ['2026-03-01', 1], ['2025-12-31', 1], ['2025-12-30', 0]])('one valid until %s, seen on 1 March, is told %i times: sixty days before and after its end', async (validUntil, times) => {
  await build.permission({ validUntil });
  expect(await ending()).toHaveLength(times);
});

test('one without an end is told by its quota alone, from nine tenths on', async () => {
  await usedUp(200, 179);
  const { id } = await usedUp(200, 180);
  expect(await ending()).toMatchObject([{ id, validUntil: null, isPast: false, used: 180, quota: 200, isNearlyUsed: true }]);
});

test('one that ended long ago is history, however much of it was used', async () => {
  await usedUp(10, 10, { validFrom: '2024-01-01', validUntil: '2024-12-31' });
  expect(await ending()).toEqual([]);
});

test('the nearest end stands first, and a day that is far is not told', async () => {
  const far = await usedUp(10, 10, { validUntil: '2027-12-31' });
  const [soon, past] = [await build.permission({ validUntil: '2026-04-01' }), await build.permission({ validUntil: '2026-02-01' })];
  expect((await ending()).map(({ id, validUntil, isPast }) => ({ id, validUntil, isPast }))).toEqual([
    { id: past.id, validUntil: '2026-02-01', isPast: true }, { id: soon.id, validUntil: '2026-04-01', isPast: false }, { id: far.id, validUntil: null, isPast: false },
  ]);
});

test('who may not see exact places is not told of permissions', async () => {
  const programme = `ending-${count}`;
  const { headers } = await member(api, 'volunteer', programme);
  expect(await new Asker(api, headers, programme).get('permissions/ending')).toMatchObject({ status: 403, body: { type: '/problems/place/grant-needed' } });
});
