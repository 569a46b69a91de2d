// What a partner is shown, by how a thing concerns them, and what they may write.
import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, type Member, member, newId } from '../../../../test/support/people.ts';
import { verify } from '../verify/verify.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const BASE = '/api/v1/programmes/harrowdale';

const as = (who: Member) => desk.as(who);
const codeOf = (body: { type?: string }): string | undefined => body.type?.replace('/problems/', '');
const partner = (name: string) => asOwner(api, async (sql) => {
  const id = newId();
  await sql.query(`INSERT INTO partner (programme_id, id, name, since) VALUES ($1, $2, $3, '2024-01-01')`, [place.programmeId, id, name]);
  return { id, person: await member(api, 'partner', 'harrowdale', { partnerId: id }) };
});
/** Reads a record, and puts it back with something else. */
async function change(path: string, content: Record<string, unknown>) {
  const { headers, body } = await desk.get(path);
  const { id: _, cell: __, plots: ___, kind: ____, parentId: _____, filling: ______, ...earlier } = body as Record<string, unknown>;
  const answer = await api.app.inject({ method: 'PUT', url: `${BASE}/${path}`, headers: { ...desk.headers, 'if-match': String(headers['etag']) }, payload: { ...earlier, ...content } });
  expect([answer.statusCode, answer.statusCode === 200 ? '' : answer.body]).toEqual([200, '']);
}

// Thornber School has the stand Corran Ridge and the site Lowmire Wood. Sixty cuttings of its first
// tree: twenty go to the wood, ten into the hands of the agency, which has nothing else here.
const school = await member(api, 'partner', 'harrowdale', { partnerId: place.partnerId });
const agency = await partner('Winterbeck Agency');
const { batchId } = await desk.stick(60, { label: 'HERE-1' });
const [planted, given] = [newId(), newId()];
await asOwner(api, (sql) => sql.query(`UPDATE stand SET note = 'behind the wall of Ada' WHERE id = $1`, [place.standId]));
const agencyBench = newId();
await desk.post('places', { id: agencyBench, kind: 'partner', parentId: null, name: 'Agency yard', walkOrder: 9, rows: null, partnerId: agency.id, note: null, filling: null });
await desk.write([
  desk.entry('2026-03-01', { kind: 'planted', batchId, toBatchId: planted, n: 20, placeId: place.plot }),
  desk.entry('2026-03-02', { kind: 'givenOut', batchId, n: 10, partnerId: agency.id, toBatchId: given, placeId: agencyBench, label: 'YARD-1' }),
]);

describe('a partner with a stand and a site', () => {
  test('sees stand, trees, batches, funnel and diversity of them, and no note', async () => {
    const ours = as(school);
    const stands = (await ours.get('stands')).body as { id: string; note: string | null }[];
    expect(stands.map(({ id, note }) => [id, note])).toEqual([[place.standId, null]]);
    expect(((await ours.get('donor-trees')).body as { label: string }[]).map(({ label }) => label)).toEqual(['CR-1', 'CR-2']);
    expect(((await ours.get('batches')).body as { id: string }[]).map(({ id }) => id).sort()).toEqual([batchId, planted, given].sort());
    const funnel = (await ours.get('readings/funnels?by=stand')).body as { groups: { stages: { stage: string; reached: number }[] }[] };
    expect(funnel.groups[0]!.stages.find(({ stage }) => stage === 'cutting')).toMatchObject({ reached: 60 });
    const diversity = (await ours.get('readings/diversity')).body as { stands: { stand: string; donorTrees: number }[] };
    expect(diversity.stands).toMatchObject([{ stand: 'Corran Ridge', donorTrees: 2 }]);
  });

  test('finds a batch by its label, and only one that concerns them', async () => {
    const found = async (who: Member, code: string) => (await as(who).get(`labels/${code}`)).status;
    expect([await found(school, 'here-1'), await found(school, 'yard-1'), await found(school, 'no-such')]).toEqual([200, 200, 404]);
    expect([await found(agency.person, 'here-1'), await found(agency.person, 'yard-1')]).toEqual([404, 200]);
    expect((await as(agency.person).get('labels/YARD-1')).body).toMatchObject({ is: 'batch', id: given });
  });

  test('is told of each batch how it concerns them, and nobody else is', async () => {
    const relations = async (who: Member) => Object.fromEntries(((await as(who).get('batches')).body as { id: string; relations: string[] }[]).map((batch) => [batch.id, batch.relations]));
    expect(await relations(school)).toEqual({ [batchId]: ['stand'], [planted]: ['site', 'stand'], [given]: ['stand'] });
    expect(await relations(agency.person)).toEqual({ [given]: ['hands'] });
    expect(await relations(place.volunteer)).toEqual({ [batchId]: [], [planted]: [], [given]: [] });
  });

  test('sees a batch with its line and labels, and none of its entries, people, benches or recipe', async () => {
    const { status, body } = await as(school).get(`batches/${batchId}`);
    expect(status).toBe(200);
    expect(body).toMatchObject({ place: null, history: [], stays: [], balance: 30, donorTree: { label: 'CR-1' }, line: { trip: null, bundle: null, sticking: { recipe: null } } });
    expect(JSON.stringify(body)).not.toContain(place.coordinator.name);
    expect((await as(school).get(`batches/${planted}`)).body).toMatchObject({ place: { name: 'P1' } });
  });

  test('is told at home what is planted, lives and is lost at its sites', async () => {
    const { body } = await as(school).get('ours');
    expect(body).toMatchObject({
      partner: { id: place.partnerId },
      stands: [{ name: 'Corran Ridge', donorTrees: 2, stuck: 60, plantsByStage: { cutting: 40, planted: 20 } }],
      sites: [{ name: 'Lowmire Wood', plots: 1, species: [{ taxon: 'Juniperus communis', planted: 20, alive: 20, died: 0, donorTrees: 1 }] }],
    });
    expect(await as(school).get('sites')).toMatchObject({ status: 200, body: [{ name: 'Lowmire Wood', plots: [{ name: 'P1' }] }] });
  });

  test('checks the trees at its site, under its own name', async () => {
    const saying = { kind: 'checked', batchId: planted, alive: 15, dead: [{ n: 2, cause: 'browsed' }], notFound: 3 };
    const entry = desk.entry('2026-06-01', saying);
    expect((await as(school).post('entries/preview', { entries: [entry] })).body).toMatchObject({ batches: [{ after: { balance: 18 } }] });
    expect(await as(school).write([entry])).toMatchObject([{ status: 'written' }]);
    expect((await as(school).get('ours')).body).toMatchObject({ sites: [{ species: [{ planted: 20, alive: 15, notFound: 3, died: 2 }] }] });
    const { rows } = await asOwner(api, (sql) => sql.query('SELECT written_by, door FROM entry WHERE id = $1', [entry.id]));
    expect(rows).toEqual([{ written_by: school.personId, door: 'desk' }]);
  });

  test.each([
    ['a death in the nursery', { kind: 'died', n: 1, cause: 'dry' }, 'entry/not-for-partners'],
    ['a count of what is not in its hands', { kind: 'counted', alive: 30, look: 'look' }, 'entry/not-for-partners'],
    ['a hold of it', { kind: 'held', reason: 'mould' }, 'entry/not-for-partners'],
  ])('may not write %s', async (_, saying, code) => {
    const { status, body } = await as(school).post('entries', { entries: [desk.entry('2026-06-02', { ...saying, batchId })] });
    expect([status, codeOf(body)]).toEqual([403, code]);
  });

  test('may not write over a whole place, for another person, or a correction', async () => {
    const checked = { kind: 'checked', alive: 18 };
    const tries = [
      desk.entry('2026-06-02', { ...checked, placeId: place.plot }),
      desk.entry('2026-06-02', { ...checked, batchId: planted }, { seenBy: place.volunteer.personId }),
      desk.entry('2026-06-02', { kind: 'withdrawn', entryId: newId(), sawVersion: newId(), reason: 'no' }),
    ];
    const answers = await Promise.all(tries.map((entry) => as(school).post('entries', { entries: [entry] })));
    expect(answers.map(({ body }) => codeOf(body))).toEqual(['batch/unknown', 'entry/not-for-partners', 'batch/unknown']);
  });
});

describe('a partner with plants in its hands', () => {
  test('sees those plants and their species, and neither stand nor donor tree', async () => {
    const ours = as(agency.person);
    const batches = (await ours.get('batches')).body as object[];
    expect(batches).toMatchObject([{ id: given, balance: 10, stand: null, donorTree: null, taxon: { name: 'Juniperus communis' }, place: { name: 'Agency yard' } }]);
    expect((await ours.get('batches?relation=hands')).body).toHaveLength(1);
    expect((await ours.get('batches?relation=stand')).body).toEqual([]);
    expect([(await ours.get('stands')).body, (await ours.get('donor-trees')).body]).toEqual([[], []]);
    expect((await ours.get('readings/funnels')).body).toMatchObject({ groups: [] });
    expect((await ours.get(`batches/${batchId}`)).status).toBe(404);
    expect((await ours.get(`stands/${place.standId}`)).status).toBe(404);
    expect((await ours.get(`donor-trees/${place.donors[0]}/descent`)).status).toBe(404);
    expect((await ours.get('ours')).body).toMatchObject({ stands: [], sites: [], hands: { batches: 1, plants: 10, unconfirmed: 1 } });
  });

  test('counts them, which confirms them', async () => {
    expect(await as(agency.person).write([desk.entry('2026-03-05', { kind: 'counted', batchId: given, alive: 9, look: 'look' })])).toMatchObject([{ status: 'written' }]);
    expect((await as(agency.person).get('ours')).body).toMatchObject({ hands: { plants: 9, unconfirmed: 0 } });
    expect(codeOf((await as(agency.person).post('entries', { entries: [desk.entry('2026-03-05', { kind: 'counted', batchId: planted, alive: 1, look: 'look' })] })).body)).toBe('batch/unknown');
  });
});

describe('what changes hands', () => {
  const sees = async (who: Member, id: string): Promise<boolean> => ((await as(who).get('batches')).body as { id: string }[]).some((batch) => batch.id === id);

  test('a stand with another partner takes its batches along, and gives them back', async () => {
    await change(`stands/${place.standId}`, { partnerId: agency.id });
    expect([await sees(school, batchId), await sees(agency.person, batchId)]).toEqual([false, true]);
    expect([await sees(school, planted), await sees(agency.person, planted)]).toEqual([true, true]);
    expect(await verify(api.database)).toEqual([]);
    await change(`stands/${place.standId}`, { partnerId: place.partnerId });
    expect([await sees(school, batchId), await sees(agency.person, batchId)]).toEqual([true, false]);
    expect(await verify(api.database)).toEqual([]);
  });

  test('a site with another partner takes along what stands there', async () => {
    await change(`sites/${place.site}`, { partnerId: agency.id });
    expect(await sees(agency.person, planted)).toBe(true);
    expect(await verify(api.database)).toEqual([]);
    await change(`sites/${place.site}`, { partnerId: place.partnerId });
    expect(await sees(agency.person, planted)).toBe(false);
    expect(await verify(api.database)).toEqual([]);
  });

  test('a tray carried to a partner’s yard is in their hands, and carried back it is not', async () => {
    const carry = (toPlaceId: string) => desk.post(`places/${place.trays[0]}/moves`, { id: newId(), toPlaceId, movedOn: '2026-07-01' });
    expect((await carry(agencyBench)).status).toBe(201);
    expect(await sees(agency.person, batchId)).toBe(true);
    expect(await verify(api.database)).toEqual([]);
    await carry(place.bench);
    expect(await sees(agency.person, batchId)).toBe(false);
    expect(await sees(agency.person, given)).toBe(true);
    expect(await verify(api.database)).toEqual([]);
  });

  test('entries written while a stand changes hands are filed under the one who has it in the end', async () => {
    await Promise.all([
      change(`stands/${place.standId}`, { partnerId: agency.id }),
      ...Array.from({ length: 12 }, () => desk.stick(1)),
    ]);
    expect(await verify(api.database)).toEqual([]);
    await change(`stands/${place.standId}`, { partnerId: place.partnerId });
    expect(await verify(api.database)).toEqual([]);
  });

  test('access ends with the time of the partner; what they wrote stays', async () => {
    await change(`partners/${agency.id}`, { until: '2026-01-01' });
    expect(codeOf((await as(agency.person).get('batches')).body)).toBe('programme/unknown');
    const { body } = await desk.get(`batches/${given}`);
    expect((body as { history: { kind: string; writtenBy: string }[] }).history).toContainEqual(expect.objectContaining({ kind: 'counted', writtenBy: agency.person.name }));
  });
});
