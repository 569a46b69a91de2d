import { MadeLink, Plan, PlanInList, PlanShare, SharedPlan } from '@sprigline/contract';
import { beforeAll, describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker } from '../../../../test/support/build.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const coordinator = new Asker(api, place.coordinator.headers);
const id = { plan: newId(), target: newId(), trees: [] as string[] };

// Six trees of Corran Ridge that stand, one that is dead, one that is a clone of another; two cut this year.
beforeAll(async () => {
  await asOwner(api, async (sql) => {
    for (let at = 3; at <= 8; at += 1) {
      const tree = newId();
      id.trees.push(tree);
      await sql.query(`INSERT INTO donor_tree (programme_id, id, label, stand_id, taxon_id, state, estimated_age_years, clone_group_id) VALUES ($1, $2, $3, $4, $5, $6, 150, $7)`,
        [place.programmeId, tree, `CR-${at}`, place.standId, place.taxonId, at === 8 ? 'dead' : 'standing', at === 7 ? id.trees[0] : null]);
    }
    await sql.query('UPDATE donor_tree SET clone_group_id = id WHERE id = $1', [id.trees[0]]);
    await sql.query(`UPDATE trip SET went_on = '2026-10-01'`);
    await sql.query(`INSERT INTO exact_place (programme_id, id, donor_tree_id, latitude, longitude, directions) VALUES ($1, $2, $3, 46.123457, -27.765432, 'behind the leaning post')`, [place.programmeId, newId(), place.donors[0]]);
    await sql.query(`UPDATE stand SET note = 'up the shooters track' WHERE id = $1`, [place.standId]);
  });
  // 40 of 50 own cuttings of CR-1 rooted; 16 of 20 of these were potted.
  const { batchId } = await desk.stick(50, {}, '2024-10-01');
  const liners = newId();
  const written = await desk.write([
    desk.entry('2025-06-01', { kind: 'lifted', batchId, toBatchId: liners, n: 40, placeId: place.bench }),
    desk.entry('2025-07-01', { kind: 'called', batchId, n: 10 }),
    desk.entry('2025-08-01', { kind: 'potted', batchId: liners, toBatchId: newId(), n: 16, placeId: place.bench }),
    desk.entry('2025-08-02', { kind: 'died', batchId: liners, n: 4, cause: 'dry' }),
  ]);
  expect(written.map(({ status }) => status), JSON.stringify(written)).toEqual(written.map(() => 'written'));
});

const target = (more: object = {}) => ({ standId: place.standId, taxonId: place.taxonId, stage: 'potted', plants: 30, donors: 4, confidence: 0.8, ...more });
const read = async (plan = id.plan): Promise<Plan> => Plan.parse((await coordinator.get(`plans/${plan}`)).body);

test('a plan answers what to stick, tree by tree, from the books of that day', async () => {
  expect((await coordinator.post('plans', { id: id.plan, name: 'Spring', season: 2027 })).status).toBe(201);
  const sent = { id: id.target, ...target() };
  expect((await coordinator.post(`plans/${id.plan}/targets`, sent)).status).toBe(201);
  expect((await coordinator.post(`plans/${id.plan}/targets`, sent)).status).toBe(201);
  const { targets: [one, ...more], seasonName } = await read();
  expect([more, seasonName]).toEqual([[], '2027/28']);
  const { answer } = one as Plan['targets'][number];
  // 40 of 50, and 8 of 20 held beforehand; then 16 of 20, and 18 of 20 held beforehand.
  expect(answer.rooting.mean).toBeCloseTo(48 / 70, 9);
  expect(answer.steps).toEqual([{ from: 'liner', goneOn: 16, settled: 20, prior: 0.9, rate: 34 / 40 }]);
  expect(answer.toEnd.mean).toBeCloseTo((48 / 70) * (34 / 40), 9);
  // 30 / 0.5829 = 51.5; at each stage 30 / 0.85 = 35.3, so 36; 36 / 0.6857 = 52.5, so 53.
  expect(answer.needed).toEqual({ once: 52, eachStage: 53, stages: [{ stage: 'cutting', plants: 53 }, { stage: 'liner', plants: 36 }] });
  // Neither the dead tree nor the second of a clone; those cut this year come last, among the others those with fewest plants first.
  expect(answer.trees.map(({ label }) => label)).toEqual(['CR-3', 'CR-4', 'CR-5', 'CR-6', 'CR-2', 'CR-1']);
  expect(answer.bets?.asPlanned.chance).toBeGreaterThanOrEqual(0.8);
  expect(answer.trees.every(({ cuttings }) => cuttings === answer.bets?.asPlanned.cuttingsPerDonor)).toBe(true);
  expect(answer.bets?.oneMoreTree.chance).toBeGreaterThan(answer.bets?.asPlanned.chance ?? 1);
  expect(answer.opinions.find(({ about }) => about === 'donor-age')).toMatchObject({ verdict: 'unusual', donors: ['CR-3', 'CR-4', 'CR-5', 'CR-6'] });
});

test('the list adds it up, and the table has a line a tree', async () => {
  const [row] = PlanInList.array().parse((await coordinator.get('plans')).body);
  const { targets } = await read();
  expect(row).toMatchObject({ name: 'Spring', targets: 1, plants: 30, cuttings: targets[0]?.answer.bets?.asPlanned.cuttings });
  const csv = (await api.app.inject({ url: `/api/v1/programmes/harrowdale/plans/${id.plan}/trees.csv`, headers: place.volunteer.headers })).body;
  expect(csv.trim().split('\r\n')).toHaveLength(7);
  expect(csv).toContain('Spring,2027/28,Corran Ridge,Juniperus communis,,30,4,potted,0.8,CR-3,150,,0,');
});

test('the list comes in parts, each plan once, the newest season first', async () => {
  for (const season of [2025, 2028, 2026, 2026]) expect((await coordinator.post('plans', { id: newId(), name: 'Another', season })).status).toBe(201);
  const seasons: string[][] = [];
  for (let next = 'plans?limit=2'; next !== ''; ) {
    const { body, headers } = await coordinator.get(next);
    seasons.push(PlanInList.array().parse(body).map(({ seasonName }) => seasonName));
    next = /<([^>]+)>/.exec(String(headers['link'] ?? ''))?.[1] ?? '';
  }
  expect(seasons).toEqual([['2028/29', '2027/28'], ['2026/27', '2026/27'], ['2025/26']]);
});

test('what was worked out stays as it was until it is worked out anew', async () => {
  const before = await coordinator.get(`plans/${id.plan}`);
  await asOwner(api, (sql) => sql.query(`UPDATE donor_tree SET state = 'dead' WHERE id = $1`, [id.trees[3]]));
  expect((await read()).targets[0]?.answer.trees).toHaveLength(6);
  const path = `plans/${id.plan}/targets/${id.target}`;
  expect((await coordinator.put(path, target())).status).toBe(428);
  expect((await coordinator.put(path, target({ mostTrees: 4 }), before.etag)).status).toBe(200);
  expect((await read()).targets[0]?.answer.trees.map(({ label }) => label)).toEqual(['CR-3', 'CR-4', 'CR-5', 'CR-2']);
  expect((await coordinator.put(path, target(), before.etag)).status).toBe(412);
});

test('too few trees is an answer, and no tree at all is a refusal', async () => {
  const [few, none] = [newId(), newId()];
  expect((await coordinator.post(`plans/${id.plan}/targets`, { id: few, ...target({ donors: 9 }) })).status).toBe(201);
  expect((await read()).targets.find((one) => one.id === few)?.answer).toMatchObject({ refused: 'planning/too-few-trees', bets: null, expected: null });
  const stand = await coordinator.post('stands', { id: newId(), name: 'Winterbeck Scar' });
  expect((await coordinator.post(`plans/${id.plan}/targets`, { id: none, ...target({ standId: stand.body.id }) })).body.type).toBe('/problems/plan/no-trees');
  expect((await coordinator.post(`plans/${id.plan}/targets`, { id: newId(), ...target({ taxonId: newId() }) })).body.type).toBe('/problems/record/no-such-taxon');
  expect((await coordinator.post(`plans/${id.plan}/targets`, { id: newId(), ...target({ otherRecipeVersionId: place.recipeVersionId }) })).body.type).toBe('/problems/plan/needs-two-recipes');
  expect((await coordinator.post(`plans/${id.plan}/targets`, { id: newId(), ...target({ siteId: newId() }) })).body.type).toBe('/problems/request/not-a-site');
  const gone = await api.app.inject({ method: 'DELETE', url: `/api/v1/programmes/harrowdale/plans/${id.plan}/targets/${few}`, headers: place.coordinator.headers });
  expect(gone.statusCode).toBe(204);
});

describe('a shared plan', () => {
  const made: { link: string; share: string } = { link: '', share: newId() };
  const token = () => made.link.split('/').at(-1) ?? '';
  const seen = () => api.app.inject({ url: `/api/v1/shared-plans/${token()}` });

  beforeAll(async () => {
    await coordinator.put(`plans/${id.plan}`, { name: 'Gully below the leaning post', season: 2027, note: 'Ask Wren at 46.1234' }, (await coordinator.get(`plans/${id.plan}`)).etag);
    const { body } = await coordinator.post(`plans/${id.plan}/shares`, { id: made.share, forName: 'Wren G.', days: 7 });
    made.link = MadeLink.parse(body).link;
  });

  test('is seen without signing in, and says nothing of where, which, or who', async () => {
    const answer = await seen();
    expect(answer.statusCode).toBe(200);
    expect(answer.headers).toMatchObject({ 'cache-control': 'no-store', 'referrer-policy': 'no-referrer' });
    const { targets: [one] } = SharedPlan.parse(answer.json());
    expect(one).toMatchObject({ plants: 30, donors: 4, stand: null, taxon: 'Juniperus communis' });
    expect(one?.answer.trees[0]).toMatchObject({ number: 1, age: 'over-hundred' });
    expect(one?.answer.opinions.find(({ about }) => about === 'donor-age')?.donors).toEqual(['1', '2', '3']);
    for (const told of ['46.12', '27.76', 'leaning', 'shooters', 'Corran', 'CR-', 'Wren', 'Spring', 'coordinator', place.coordinator.name, place.standId, place.donors[0], 'ageYears', 'Lowmire']) expect(answer.body, told).not.toContain(told);
  });

  test('names a stand whose place is no secret', async () => {
    await asOwner(api, (sql) => sql.query('UPDATE taxon SET sensitivity = 0'));
    expect((await seen()).body).toContain('Corran Ridge');
    await asOwner(api, (sql) => sql.query('UPDATE stand SET sensitivity = 4'));
    expect((await seen()).body).not.toContain('Corran Ridge');
  });

  test('only its hash is kept, and the same request has the same answer', async () => {
    const again = await coordinator.post(`plans/${id.plan}/shares`, { id: made.share, forName: 'Wren G.', days: 7 });
    expect(again.body.link).toBe(made.link);
    const { rows } = await asOwner(api, (sql) => sql.query('SELECT plan_share::text AS row FROM plan_share'));
    expect(JSON.stringify(rows)).not.toContain(token());
  });

  test('is over on its day, when its maker leaves, and at once when it is closed', async () => {
    const closed = async (sql: string, back: string) => {
      await asOwner(api, (door) => door.query(sql));
      const { statusCode, body } = await seen();
      await asOwner(api, (door) => door.query(back));
      return `${statusCode} ${(JSON.parse(body) as { type: string }).type}`;
    };
    const shut = '404 /problems/link/closed';
    expect(await closed(`UPDATE plan_share SET expires_at = now() - interval '1 second'`, `UPDATE plan_share SET expires_at = now() + interval '1 day'`)).toBe(shut);
    expect(await closed(`UPDATE person SET left_at = now() WHERE id = '${place.coordinator.personId}'`, `UPDATE person SET left_at = NULL WHERE id = '${place.coordinator.personId}'`)).toBe(shut);
    expect((await seen()).statusCode).toBe(200);
    const url = `/api/v1/programmes/harrowdale/plans/${id.plan}/shares/${made.share}`;
    for (const _ of [1, 2]) expect((await api.app.inject({ method: 'DELETE', url, headers: place.coordinator.headers })).statusCode).toBe(204);
    expect((await seen()).json()).toMatchObject({ type: '/problems/link/closed', status: 404 });
    expect((await api.app.inject({ url: '/api/v1/shared-plans/nothing' })).statusCode).toBe(404);
    expect(PlanShare.array().parse((await coordinator.get(`plans/${id.plan}/shares`)).body)).toMatchObject([{ forName: 'Wren G.', state: 'revoked' }]);
  });

  test('is for the desk to hand out, and not for too long', async () => {
    const volunteer = new Asker(api, place.volunteer.headers);
    expect((await volunteer.post(`plans/${id.plan}/shares`, { id: newId(), forName: 'Fern A.' })).status).toBe(403);
    expect((await volunteer.get(`plans/${id.plan}/shares`)).status).toBe(403);
    expect((await coordinator.post(`plans/${id.plan}/shares`, { id: newId(), forName: 'Fern A.', days: 91 })).status).toBe(422);
    const partner = new Asker(api, (await member(api, 'partner')).headers);
    expect((await partner.get(`plans/${id.plan}`)).status).toBe(403);
  });
});
