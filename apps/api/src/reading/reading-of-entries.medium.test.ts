import { expect, test } from 'vitest';
import { Diversity, DonorHoldings, Funnels } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

// Twenty cuttings of each tree; four of each mixed into one batch, five of these lifted; six of the first tree die.
const [mixed, lifted] = [newId(), newId()];
const [first, second] = [await desk.stick(20), await desk.stick(20, { bundleId: place.bundles[1] })];
await desk.write([
  desk.entry('2026-03-01', { kind: 'died', batchId: first.batchId, n: 6, cause: 'rot' }),
  desk.entry('2026-03-02', { kind: 'mixed', toBatchId: mixed, placeId: place.bench, parts: [{ batchId: first.batchId, n: 4 }, { batchId: second.batchId, n: 4 }] }),
  desk.entry('2026-03-03', { kind: 'lifted', batchId: mixed, toBatchId: lifted, n: 5, placeId: place.bench }),
]);

test('the books that entries make are what is read', async () => {
  const { groups } = Funnels.parse((await desk.get('readings/funnels?by=stand')).body);
  expect(groups[0]?.stages[0]).toMatchObject({ reached: 40, died: { rot: 6 }, mixedAway: 8, here: 26, donors: { reached: 2, left: 2 } });
});

test('what came of a mixed batch is of one or both of the trees that went into it', async () => {
  const { stands } = Diversity.parse((await desk.get('readings/diversity')).body);
  const [cutting, liner] = stands[0]?.stages ?? [];
  expect(cutting).toMatchObject({ perDonor: [16, 10], mixedPlants: 3, withMixed: { atLeast: 2, atMost: 2 } });
  expect(liner).toMatchObject({ donors: 0, mixedPlants: 5, withMixed: { atLeast: 1, atMost: 2 } });
});

test('a filter that leaves out a part of the mixture leaves out the mixture', async () => {
  const { stands } = Diversity.parse((await desk.get(`readings/diversity?donorTreeId=${place.donors[0]}`)).body);
  expect(stands[0]?.stages.map(({ plants, mixedPlants }) => [plants, mixedPlants])).toEqual([[10, 0], [0, 0], [0, 0], [0, 0]]);
});

test('unrooted cuttings nobody looked at are not told, and so no risk', async () => {
  const { donors } = DonorHoldings.parse((await desk.get('readings/donors')).body);
  expect(donors.map(({ rootedNow, plants, risks }) => [rootedNow, plants, risks])).toEqual([[null, 10, []], [null, 16, []]]);
});
