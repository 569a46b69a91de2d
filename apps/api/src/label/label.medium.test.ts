import type { LabelLine, LabelRoll } from '@sprigline/contract';
import { isLabelCode, shownLabelCode } from '@sprigline/domain';
import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const volunteer = desk.as(place.volunteer);
const codeOf = (answer: { body: { type?: string } }): string | undefined => answer.body.type?.replace('/problems/', '');

async function roll(n: number, id = newId()): Promise<LabelRoll> {
  const { status, body } = await volunteer.post('label-rolls', { id, name: 'Blue roll', n });
  expect(status, JSON.stringify(body)).toBe(201);
  return body;
}
const drawn = async (): Promise<string> => (await roll(1)).codes[0]!.code;

describe('a roll of labels', () => {
  test('is drawn once, however often it is asked for', async () => {
    const id = newId();
    const first = await roll(24, id);
    expect(first).toMatchObject({ id, name: 'Blue roll', unclaimed: 24, madeBy: place.volunteer.personId });
    expect(first.codes.map(({ number }) => number)).toEqual(Array.from({ length: 24 }, (_, at) => at + 1));
    expect(first.codes.every(({ code, on }) => isLabelCode(code) && on === null)).toBe(true);
    expect(await roll(24, id)).toEqual(first);
    expect(codeOf(await volunteer.post('label-rolls', { id, name: 'Blue roll', n: 25 }))).toBe('record/id-reused');
  });

  test('shares no code with another one, of two thousand each', async () => {
    const [one, other] = await Promise.all([roll(2000), roll(2000)]);
    expect(new Set([...one.codes, ...other.codes].map(({ code }) => code)).size).toBe(4000);
    expect((await volunteer.post('label-rolls', { id: newId(), name: 'too long', n: 2001 })).status).toBe(422);
  });

  test('is listed with how much of it is left, and stands in the database for good', async () => {
    const made = await roll(3);
    await volunteer.post('labels', { code: made.codes[1]!.code, placeId: place.house });
    const listed = (await volunteer.get('label-rolls?limit=1')).body as { id: string }[];
    expect(listed).toMatchObject([{ id: made.id, codes: 3, unclaimed: 2 }]);
    const seen = (await volunteer.get(`label-rolls/${made.id}`)).body as LabelRoll;
    expect(seen.codes[1]).toMatchObject({ number: 2, on: { is: 'place', id: place.house } });
    const csv = await api.app.inject({ url: `/api/v1/programmes/harrowdale/label-rolls/${made.id}/codes.csv`, headers: place.volunteer.headers });
    expect(csv.body).toContain(`2,${made.codes[1]!.code},place,${place.house},`);
    for (const deed of ['UPDATE roll_code SET number = number + 9000', 'DELETE FROM roll_code', 'DELETE FROM label_roll', 'DELETE FROM label']) {
      await expect(asOwner(api, (sql) => sql.query(deed)), deed).rejects.toThrow('never changed');
    }
  });
});

describe('a label', () => {
  test('that is unclaimed says so; claimed it leads to its batch, however it is typed', async () => {
    const code = await drawn();
    const { batchId } = await desk.stick(40);
    expect((await volunteer.get(`labels/${code}`)).body).toMatchObject({ code, is: 'unclaimed', givenAt: null });
    expect((await volunteer.post('labels', { code: shownLabelCode(code).toLowerCase(), batchId })).body).toMatchObject({ code, is: 'batch', id: batchId });
    for (const typed of [code, code.toLowerCase(), shownLabelCode(code), `${code.slice(0, 4)}-${code.slice(4)}`]) {
      expect((await volunteer.get(`labels/${encodeURIComponent(typed)}`)).body).toMatchObject({ code, is: 'batch', id: batchId, givenAt: expect.stringMatching(/Z$/) });
    }
  });

  test('is on one thing only, and putting it there again changes nothing', async () => {
    const code = await drawn();
    const donorTreeId = place.donors[0];
    const given = await volunteer.post('labels', { code, donorTreeId });
    expect(await volunteer.post('labels', { code, donorTreeId })).toMatchObject({ status: 200, body: given.body });
    for (const other of [{ donorTreeId: place.donors[1] }, { placeId: place.house }, { batchId: (await desk.stick(5)).batchId }]) {
      expect(codeOf(await volunteer.post('labels', { code: code.toLowerCase(), ...other }))).toBe('batch/label-taken');
    }
    const { batchId } = await desk.stick(7);
    const [told] = await desk.write([desk.entry('2026-03-01', { kind: 'lifted', batchId, toBatchId: newId(), n: 5, placeId: place.trays[1], label: code.toLowerCase() })]);
    expect(told).toMatchObject({ status: 'refused', problem: { type: '/problems/batch/label-taken' } });
  });

  test('put on a batch later is the one that is shown, and the earlier one still leads there', async () => {
    const { batchId } = await desk.stick(9, { label: 'OLD-1' });
    const code = await drawn();
    await volunteer.post('labels', { code, batchId });
    expect((await desk.get(`batches/${batchId}`)).body).toMatchObject({ label: code, labels: [code, 'OLD-1'] });
    expect((await desk.get('labels/old-1')).body).toMatchObject({ code: 'OLD-1', is: 'batch', id: batchId });
  });

  test('of a roll is claimed by an entry that gives it, also in small letters', async () => {
    const code = await drawn();
    const { batchId } = await desk.stick(12, { label: shownLabelCode(code).toLowerCase() });
    expect((await desk.get(`labels/${code}`)).body).toMatchObject({ code, is: 'batch', id: batchId });
    expect((await desk.get(`batches/${batchId}`)).body.label).toBe(code);
  });

  test('of somebody’s own may be put on anything that has none', async () => {
    expect((await volunteer.post('labels', { code: ' House A ', placeId: place.house })).body).toMatchObject({ code: 'House A', is: 'place', id: place.house });
  });

  test('that is mistyped, unknown, on nothing or on two things is refused, each in its own words', async () => {
    const code = await drawn();
    const wrong = code.slice(0, -1) + (code.endsWith('2') ? '3' : '2');
    const { batchId } = await desk.stick(3);
    expect(await volunteer.get(`labels/${wrong}`)).toMatchObject({ status: 422, body: { type: '/problems/label/mistyped' } });
    expect(codeOf(await volunteer.post('labels', { code: wrong, batchId }))).toBe('label/mistyped');
    expect(await volunteer.get('labels/NOBODY-1')).toMatchObject({ status: 404, body: { type: '/problems/label/unknown' } });
    expect(codeOf(await volunteer.post('labels', { code, batchId: newId() }))).toBe('batch/unknown');
    expect(codeOf(await volunteer.post('labels', { code, donorTreeId: newId() }))).toBe('record/no-such-donor-tree');
    expect(codeOf(await volunteer.post('labels', { code, placeId: newId() }))).toBe('record/no-such-place');
    expect((await volunteer.post('labels', { code })).status).toBe(422);
    expect((await volunteer.post('labels', { code, batchId, placeId: place.house })).status).toBe(422);
    expect((await volunteer.get(`labels/${code}`)).body).toMatchObject({ is: 'unclaimed' });
  });

  test('of an old numbering that looks like our codes is found, printed and never used twice; a new one of that form is refused', async () => {
    const [{ batchId }, { batchId: toBatchId }] = [await desk.stick(30), await desk.stick(5)];
    const old = 'WS23 4456';
    const part = (label: string) => desk.entry('2026-03-01', { kind: 'moved', batchId, toBatchId: newId(), n: 3, placeId: place.bench, label });
    // As a sheet brings it, whose labels are as they are.
    await asOwner(api, (sql) => sql.query('INSERT INTO label (programme_id, code, batch_id) VALUES ($1, $2, $3)', [place.programmeId, old, toBatchId]));
    for (const typed of [old, 'ws23 4456']) expect((await volunteer.get(`labels/${encodeURIComponent(typed)}`)).body).toMatchObject({ code: old, is: 'batch', id: toBatchId });
    expect((await volunteer.get(`labels?of=batches&ids=${toBatchId}`)).body).toMatchObject([{ code: old }]);
    expect((await volunteer.post('labels', { code: old, batchId: toBatchId })).status).toBe(200);
    expect(codeOf(await volunteer.post('labels', { code: old, batchId }))).toBe('batch/label-taken');
    for (const door of ['desk', 'outbox'] as const) {
      expect(await desk.write([part(old), part('WS23 4457')], { door })).toMatchObject([{ problem: { type: '/problems/batch/label-taken' } }, { problem: { type: '/problems/label/mistyped' } }]);
    }
  });

  test('is told to who follows changes', async () => {
    const code = await drawn();
    const { batchId } = await desk.stick(3);
    const onward = /<\/api\/v1\/programmes\/harrowdale\/([^>]+)>/.exec(String((await desk.get('changes?from=now')).headers['link']))?.[1] ?? '';
    await volunteer.post('labels', { code, batchId });
    expect((await desk.get(onward)).body.changes).toContainEqual(expect.objectContaining({ kind: 'batch', id: batchId }));
  });
});

describe('labels of what stands somewhere', () => {
  test('are told in walking order, and those that are missing are drawn once', async () => {
    const bench = newId();
    await desk.post('places', { id: bench, kind: 'bench', parentId: place.house, name: 'Far bench', walkOrder: 99, rows: null, partnerId: null, note: null, filling: null });
    const { batchId } = await desk.stick(30, { label: 'FAR-1', placeId: bench });
    const bare = (await desk.stick(20, { placeId: bench })).batchId;
    const lines = (await volunteer.get(`labels?of=batches&placeId=${bench}`)).body as LabelLine[];
    expect(lines).toMatchObject([
      { is: 'batch', id: batchId, code: 'FAR-1', donorTree: 'CR-1', stand: 'Corran Ridge', stage: 'cutting', stuckOn: '2025-10-02', path: [expect.any(String), 'Far bench'] },
      { id: bare, code: null },
    ]);
    const [first, again] = [await volunteer.post('labels/missing', { of: 'batches', placeId: bench }), await volunteer.post('labels/missing', { of: 'batches', placeId: bench })];
    const [kept, drawnNow] = first.body as LabelLine[];
    expect([kept?.code, isLabelCode(drawnNow?.code ?? '')]).toEqual(['FAR-1', true]);
    expect(again.body).toEqual(first.body);
    expect((await volunteer.get(`labels/${drawnNow?.code}`)).body).toMatchObject({ is: 'batch', id: bare });
  });

  test('of trees and places are drawn too, for one by its id or for all of a stand', async () => {
    const trees = (await volunteer.post('labels/missing', { of: 'donorTrees', standId: place.standId })).body as LabelLine[];
    expect(trees.map(({ donorTree, is }) => [donorTree, is])).toEqual([['CR-1', 'donorTree'], ['CR-2', 'donorTree']]);
    expect(trees.every(({ code }) => code !== null)).toBe(true);
    const [tray] = (await volunteer.post('labels/missing', { of: 'places', ids: [place.trays[0]] })).body as LabelLine[];
    expect(tray).toMatchObject({ is: 'place', id: place.trays[0], code: expect.any(String) });
    expect((await volunteer.get(`labels?of=places&ids=${place.trays[0]}`)).body).toEqual([tray]);
  });

  test('must be chosen', async () => {
    expect(codeOf(await volunteer.get('labels?of=batches'))).toBe('label/choose-first');
    expect(codeOf(await volunteer.post('labels/missing', { of: 'places' }))).toBe('label/choose-first');
  });
});

describe('a partner', () => {
  test('reads the labels of their own trees, sites and plants, and no other; nothing of a roll', async () => {
    const ours = desk.as(await member(api, 'partner', 'harrowdale', { partnerId: place.partnerId }));
    const strangers = desk.as(await member(api, 'partner'));
    const [tree, plot, bench, free] = [await drawn(), await drawn(), await drawn(), await drawn()];
    await volunteer.post('labels', { code: tree, donorTreeId: place.donors[0] });
    await volunteer.post('labels', { code: plot, placeId: place.plot });
    await volunteer.post('labels', { code: bench, placeId: place.house });
    const found = async (who: typeof desk, codes: string[]) => Promise.all(codes.map(async (code) => (await who.get(`labels/${code}`)).status));
    expect(await found(ours, [tree, plot, bench, free])).toEqual([200, 200, 404, 404]);
    expect(await found(strangers, [tree, plot, bench, free])).toEqual([404, 404, 404, 404]);
  });
});
