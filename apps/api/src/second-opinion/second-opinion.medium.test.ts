import { SecondOpinion } from '@sprigline/contract';
import { beforeAll, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const recipeVersionId = newId();
const night: { stickingId: string }[] = [];

// Two trees of Corran Ridge: one of 240 years, 9 cm cuttings without hormone in one tray, four of them torn; the other young.
beforeAll(async () => {
  await asOwner(api, async (sql) => {
    await sql.query('UPDATE donor_tree SET estimated_age_years = 240 WHERE id = $1', [place.donors[0]]);
    await sql.query('UPDATE donor_tree SET estimated_age_years = 30 WHERE id = $1', [place.donors[1]]);
    await sql.query('UPDATE bundle SET length_cm = CASE id WHEN $1 THEN 9 ELSE 14 END', [place.bundles[0]]);
    await sql.query(`INSERT INTO recipe_version (programme_id, id, recipe_id, version, hormone_ppm, medium, made_on) SELECT programme_id, $1, recipe_id, 2, 0, 'sand:peat 1:1', '2025-09-02' FROM recipe_version`, [recipeVersionId]);
    await sql.query(`INSERT INTO regime (programme_id, id, place_id, from_day, light_hours, told_by) VALUES ($1, $2, $3, '2025-09-01', 18, $4), ($1, $5, $3, '2025-11-01', 12, $4)`, [place.programmeId, newId(), place.house, place.coordinator.personId, newId()]);
  });
  night.push(await desk.stick(20, { recipeVersionId, wood: 'hardwood', strippedAround: 4 }), await desk.stick(30, { recipeVersionId, bundleId: place.bundles[1], placeId: place.trays[1], damaged: [{ n: 2, how: 'girdled' }] }));
});

const asked = async (path: string) => SecondOpinion.parse((await desk.get(path)).body).groups;

test('a night of sticking is read whole: what was unusual, of which trees, and what it rests on', async () => {
  const [group, ...more] = await asked(`trips/${place.tripId}/second-opinion`);
  expect(more).toEqual([]);
  expect(group).toMatchObject({ stand: { name: 'Corran Ridge' }, taxon: { name: 'Juniperus communis' }, stuckOn: '2025-10-02', cuttings: 50, donors: 2, species: { name: 'Juniperus communis' } });
  const found = Object.fromEntries((group?.opinions ?? []).map(({ about, verdict, basis, says, donors }) => [about, `${verdict}, ${basis}, ${says}, ${donors.join(' ')}`]));
  expect(found).toMatchObject({
    'length': 'unusual, species-row, below, CR-1', 'hormone': 'unusual, species-row, none-used, ', 'light': 'unusual, common-practice, above, ', 'donor-age': 'unusual, common-practice, old, CR-1',
    'stripped': 'unusual, common-practice, torn, CR-1 CR-2', 'places': 'unusual, common-practice, one-tray, CR-1 CR-2', 'medium': 'usual, species-row, within, ', 'donors': 'no-evidence, no-evidence, no-target, ',
    'comparison': 'no-evidence, no-evidence, one-recipe, ', 'first-check': 'usual, species-row, late-enough, ',
  });
  expect(group?.opinions.find(({ about }) => about === 'stripped')?.facts).toMatchObject({ cuttings: 6, of: 50 });
  // Nothing of its own yet: 0.4 held beforehand, of 50 cuttings.
  expect(group?.chance).toMatchObject({ mean: 0.4, settled: 0, ownWeight: 0, prior: { basis: 'common-practice' } });
  expect(group?.expected.plants.expected).toBeCloseTo(20, 9);
  expect([group?.firstCheckOn, group?.verdictOn]).toEqual(['2025-11-13', '2026-10-02']);
});

test('one sticking is read by itself', async () => {
  const [group] = await asked(`stickings/${night[1]?.stickingId}/second-opinion`);
  expect(group).toMatchObject({ cuttings: 30, donors: 1 });
  expect(group?.opinions.find(({ about }) => about === 'length')).toMatchObject({ verdict: 'usual' });
});

test('own closed stickings are what others got, and draw the chance', async () => {
  for (const [at, lifted] of [12, 18, 6].entries()) {
    const { batchId } = await desk.stick(20, { bundleId: place.bundles[at % 2], placeId: place.trays[2] }, `2024-10-0${at + 1}`);
    const written = await desk.write([
      desk.entry('2025-06-01', { kind: 'lifted', batchId, toBatchId: newId(), n: lifted, placeId: place.bench }),
      desk.entry('2025-09-01', { kind: 'called', batchId, n: 20 - lifted }),
    ]);
    expect(written.map(({ status }) => status), JSON.stringify(written)).toEqual(['written', 'written']);
  }
  const [group] = await asked(`stickings/${night[0]?.stickingId}/second-opinion`);
  // 36 of 60 own, and 8 of 20 held beforehand.
  expect(group?.chance.mean).toBeCloseTo(44 / 80, 9);
  expect(group?.chance).toMatchObject({ goneOn: 36, settled: 60, donors: 2 });
  expect(group?.opinions.find(({ about }) => about === 'length')).toMatchObject({ like: { goneOn: 18, settled: 40, donors: 1 }, unlike: { goneOn: 18, settled: 20, donors: 1 } });
});

test('a correction is read as it was corrected, and more torn than stuck is no answer', async () => {
  const { stickingId, entryId } = await desk.stick(10, { strippedAround: 1, placeId: place.trays[2] }, '2025-12-01');
  const { saying } = (await asOwner(api, (sql) => sql.query<{ saying: object }>('SELECT body AS saying FROM entry WHERE id = $1', [entryId]))).rows[0] ?? { saying: {} };
  await desk.write([desk.entry('2025-12-02', { kind: 'replaced', entryId, sawVersion: entryId, reason: 'misread', instead: { observedOn: '2025-12-01', saying: { ...saying, strippedAround: 0 } } })]);
  expect((await asked(`stickings/${stickingId}/second-opinion`))[0]?.opinions.find(({ about }) => about === 'stripped')).toMatchObject({ verdict: 'usual', says: 'bark-whole' });
  const { status } = await desk.post('entries', { entries: [desk.entry('2025-12-03', { kind: 'stuck', batchId: newId(), stickingId: newId(), n: 3, placeId: place.trays[0], bundleId: place.bundles[0], strippedAround: 4 })] });
  expect(status).toBe(422);
});

test('what is not there is not there, and partners are told nothing', async () => {
  expect(await desk.get(`trips/${newId()}/second-opinion`)).toMatchObject({ status: 404, body: { type: '/problems/record/unknown' } });
  expect((await desk.as(await member(api, 'partner')).get(`trips/${place.tripId}/second-opinion`)).status).toBe(403);
});
