import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const add = (table: string, row: Record<string, unknown>) => asOwner(api, async (sql) => {
  const [id, columns] = [newId(), Object.keys(row)];
  await sql.query(`INSERT INTO ${table} (programme_id, id, ${columns.join(', ')}) VALUES ($1, $2, ${columns.map((_, at) => `$${at + 3}`).join(', ')})`, [place.programmeId, id, ...Object.values(row)]);
  return id;
});
// A second stand of the same species, nobody's; and a yew in it.
const elsewhere = await add('stand', { name: 'Winterbeck Scar' });
const yew = await add('taxon', { scientific_name: 'Taxus baccata' });
const farTree = await add('donor_tree', { label: 'WS-1', stand_id: elsewhere, taxon_id: place.taxonId });
const farYew = await add('donor_tree', { label: 'WS-2', stand_id: elsewhere, taxon_id: yew });

const received = async (told: Record<string, unknown>) => {
  const batchId = newId();
  await desk.write([desk.entry('2025-10-03', { kind: 'received', batchId, stickingId: newId(), n: 10, stage: 'cutting', source: 'opening', placeId: place.trays[1], ...told })]);
  return batchId;
};
const mixed = async (...from: readonly string[]) => {
  const toBatchId = newId();
  const [item] = await desk.write([desk.entry('2026-01-10', { kind: 'mixed', toBatchId, placeId: place.trays[2], parts: from.map((batchId) => ({ batchId, n: 3 })) })]);
  expect(item?.status).toBe('written');
  return toBatchId;
};
const shown = async (batchId: string, as = desk) => {
  const page = (await as.get(`batches/${batchId}`)).body;
  const inList = ((await as.get('batches')).body as typeof page[]).find(({ id }) => id === batchId);
  expect([inList.taxon, inList.stand]).toEqual([page.taxon, page.stand]);
  return [page.taxon?.name, page.stand?.name, page.line.stand?.name];
};
const [first, second] = [(await desk.stick(20)).batchId, (await desk.stick(20, { bundleId: place.bundles[1] })).batchId];

test('a mixed batch says of which species and stand it is, if all of it is of one; so does what is split off it', async () => {
  const batch = await mixed(first, second);
  const half = newId();
  await desk.write([desk.entry('2026-01-11', { kind: 'moved', batchId: batch, toBatchId: half, n: 2, placeId: place.bench })]);
  expect(await shown(batch)).toEqual(['Juniperus communis', 'Corran Ridge', 'Corran Ridge']);
  expect(await shown(half)).toEqual(['Juniperus communis', 'Corran Ridge', 'Corran Ridge']);
});

test('what is of two stands says neither, what is of two species neither of them', async () => {
  const twoStands = await mixed(first, await received({ donorTreeId: farTree }));
  expect(await shown(twoStands)).toEqual(['Juniperus communis', undefined, undefined]);
  expect(await shown(await mixed(twoStands, await received({ donorTreeId: farYew })))).toEqual([undefined, undefined, undefined]);
});

test('plants of an unknown tree are of the stand of all that they may be of', async () => {
  expect(await shown(await received({ candidates: [...place.donors] }))).toEqual(['Juniperus communis', 'Corran Ridge', 'Corran Ridge']);
  expect(await shown(await received({ candidates: [place.donors[0], farTree] }))).toEqual(['Juniperus communis', undefined, undefined]);
  const unknown = await received({ taxonId: place.taxonId });
  expect(await shown(unknown)).toEqual(['Juniperus communis', undefined, undefined]);
  expect(await shown(await mixed(first, unknown))).toEqual(['Juniperus communis', undefined, undefined]);
});

test('a partner is told the species of theirs, and the stand only where all of it is theirs', async () => {
  const school = desk.as(await member(api, 'partner', 'harrowdale', { partnerId: place.partnerId }));
  expect(await shown(await mixed(first, second), school)).toEqual(['Juniperus communis', 'Corran Ridge', 'Corran Ridge']);
  expect(await shown(await mixed(first, await received({ donorTreeId: farTree })), school)).toEqual(['Juniperus communis', undefined, undefined]);
});
