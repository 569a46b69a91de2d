import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const [first, second] = place.donors;

/** A tree on nobody's land, of another species. */
const yew = await asOwner(api, async (sql) => {
  const [taxon, stand, tree] = [newId(), newId(), newId()];
  await sql.query('INSERT INTO taxon (programme_id, id, scientific_name) VALUES ($1, $2, $3)', [place.programmeId, taxon, 'Taxus baccata']);
  await sql.query('INSERT INTO stand (programme_id, id, name) VALUES ($1, $2, $3)', [place.programmeId, stand, 'Winterbeck Scar']);
  await sql.query('INSERT INTO donor_tree (programme_id, id, label, stand_id, taxon_id) VALUES ($1, $2, $3, $4, $5)', [place.programmeId, tree, 'WS-1', stand, taxon]);
  return tree;
});

const determine = (stickingId: string, donorTreeId: string | null, determinedOn: string, more = {}) =>
  desk.post(`stickings/${stickingId}/determinations`, { id: newId(), donorTreeId, determinedOn, evidence: 'the label lay in the wrong tray', ...more });
const donorOf = async (batchId: string) => (await desk.get(`batches/${batchId}`)).body.donorTree?.label ?? null;

/** A tray, liners of it, planted trees of those, a second try, and a mixture with another tree's plants. */
async function family(label: string) {
  const { batchId, stickingId } = await desk.stick(40, { label });
  const other = await desk.stick(10, { label: `${label}x`, bundleId: place.bundles[1] });
  const [liners, planted, again, secondTry, mixture] = [newId(), newId(), newId(), newId(), newId()];
  const written = await desk.write([
    desk.entry('2026-03-01', { kind: 'lifted', batchId, n: 12, toBatchId: liners, placeId: place.bench, label: `${label}-L` }),
    desk.entry('2026-03-02', { kind: 'restuck', batchId, n: 6, toBatchId: again, stickingId: secondTry, placeId: place.trays[2], label: `${label}-2` }),
    desk.entry('2026-03-03', { kind: 'mixed', toBatchId: mixture, placeId: place.trays[2], parts: [{ batchId, n: 5 }, { batchId: other.batchId, n: 5 }], label: `${label}-M` }),
    desk.entry('2026-09-01', { kind: 'planted', batchId: liners, n: 4, toBatchId: planted, placeId: place.plot, label: `${label}-T` }),
  ]);
  expect(written.map(({ status }) => status)).toEqual(['written', 'written', 'written', 'written']);
  return { batchId, stickingId, liners, planted, again, secondTry, mixture };
}

test('all that another donor tree would change is listed before it is written, and nothing is', async () => {
  const { batchId, stickingId, liners, planted, again, secondTry, mixture } = await family('D1');
  const { status, body } = await desk.get(`stickings/${stickingId}/determination-effects?donorTreeId=${yew}`);

  expect(status).toBe(200);
  expect(body).toMatchObject({
    from: { label: 'CR-1', stand: { name: 'Corran Ridge' } }, to: { label: 'WS-1', taxon: { name: 'Taxus baccata' } },
    sites: [{ place: { name: 'Lowmire Wood' }, plants: 4 }], stands: [{ name: 'Corran Ridge' }, { name: 'Winterbeck Scar' }],
    taxonChanges: true, partners: { lose: ['Thornber School'], gain: [] },
    // 40 stuck, of which 5 were mixed away and none were lost.
    plants: 35,
  });
  expect(body.stickings.map(({ id }: { id: string }) => id).sort()).toEqual([stickingId, secondTry].sort());
  expect(body.labels).toEqual(['D1', 'D1-2', 'D1-L', 'D1-M', 'D1-T']);
  expect(body.batches.map(({ id, isMixed }: { id: string; isMixed: boolean }) => [id, isMixed]).sort()).toEqual(
    [[batchId, false], [liners, false], [planted, false], [again, false], [mixture, true]].sort(),
  );
  expect(await donorOf(batchId)).toBe('CR-1');
});

test('a determination reaches every batch of the sticking and of what was stuck again from it; the last by its day holds', async () => {
  const { batchId, stickingId, planted, again } = await family('D2');
  const { body } = await determine(stickingId, second, '2026-10-01');

  expect(body).toMatchObject({ sticking: { donorTree: { label: 'CR-2' } }, said: [{ donorTree: { label: 'CR-2' }, by: place.coordinator.name, holds: true }] });
  expect(await Promise.all([batchId, planted, again].map(donorOf))).toEqual(['CR-2', 'CR-2', 'CR-2']);

  // Written later, of an earlier day: kept, and without effect.
  const late = await determine(stickingId, first, '2026-04-01');
  expect(late.body.said).toMatchObject([{ determinedOn: '2026-10-01', holds: true }, { determinedOn: '2026-04-01', holds: false }]);
  expect(await donorOf(planted)).toBe('CR-2');

  await determine(stickingId, null, '2026-11-01');
  expect(await donorOf(planted)).toBeNull();
});

test('partners see what is of their land now, and no longer what turned out not to be', async () => {
  const { batchId, stickingId, mixture, liners, planted } = await family('D3');
  const seen = async (id: string) => (await asOwner(api, (sql) => sql.query('SELECT relation FROM batch_partner WHERE batch_id = $1 ORDER BY 1', [id]))).rows.map(({ relation }) => relation);
  expect([await seen(batchId), await seen(planted)]).toEqual([['stand'], ['site', 'stand']]);

  await determine(stickingId, yew, '2026-10-01');
  // The mixture holds plants of the other tree, too, which stands on the partner's land.
  expect([await seen(batchId), await seen(liners), await seen(planted), await seen(mixture)]).toEqual([[], [], ['site'], ['stand']]);

  const next = newId();
  await desk.write([desk.entry('2026-10-02', { kind: 'potted', batchId: liners, n: 2, toBatchId: next, placeId: place.bench })]);
  expect([await seen(next), await donorOf(next)]).toEqual([[], 'WS-1']);

  await determine(stickingId, first, '2026-10-03');
  expect([await seen(batchId), await seen(planted), await seen(mixture)]).toEqual([['stand'], ['site', 'stand'], ['stand']]);
});

test('sent twice it is written once; the same id with other words is refused, as is a tree that is not there', async () => {
  const { stickingId } = await family('D4');
  const id = newId();
  expect((await determine(stickingId, second, '2026-10-01', { id })).body.said).toHaveLength(1);
  expect((await determine(stickingId, second, '2026-10-01', { id })).body.said).toHaveLength(1);

  expect(await determine(stickingId, first, '2026-10-01', { id })).toMatchObject({ status: 422, body: { type: '/problems/record/id-reused' } });
  expect(await determine(stickingId, newId(), '2026-10-01')).toMatchObject({ status: 422, body: { type: '/problems/record/no-such-donor-tree' } });
  expect(await determine(newId(), first, '2026-10-01')).toMatchObject({ status: 404, body: { type: '/problems/record/unknown' } });
  expect((await determine(stickingId, first, '2026-10-01', { evidence: '' })).status).toBe(422);
});

test('another tray of the same bundle still joins its sticking after that was determined anew', async () => {
  const { stickingId } = await family('D5');
  await determine(stickingId, second, '2026-10-01');
  const [item] = await desk.write([
    desk.entry('2025-10-02', { kind: 'stuck', batchId: newId(), stickingId, n: 7, placeId: place.trays[1], bundleId: place.bundles[0], recipeVersionId: place.recipeVersionId }),
  ]);
  expect(item).toMatchObject({ status: 'written' });
});
