import type { Pack, SealedPlaceTold } from '@sprigline/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { SECRET, testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';
import { sealPlace } from '../../../../test/support/sealed-place.ts';
import { listenToLog } from '../../../../test/year/log.ts';
import { SealQueries } from './seal.queries.ts';

const log = listenToLog();
afterAll(log.stop);
const api = await testApi({ log: 'info' });
const place = await nursery(api);
const desk = new Desk(api, place);
const volunteer = desk.as(place.volunteer);
const answers: string[] = [];
const PLACE = { latitude: 3.417001, longitude: -28.583001, uncertaintyM: 4, elevationM: null, directions: 'by the leaning post' };
const TRACES = /3\.4170|28\.5830|leaning/;

let pack: Pack;
const read = async (): Promise<Pack> => {
  const { body } = await volunteer.get('pack');
  answers.push(JSON.stringify(body));
  return body as Pack;
};
beforeAll(async () => void (pack = await read()));

const sealed = (donorTreeId: string, told: object = PLACE, key = pack.seal) => sealPlace(told as typeof PLACE, key, { programmeId: place.programmeId, donorTreeId });

async function tell(donorTreeId: string, payload: object, who = volunteer) {
  const answer = await api.app.inject({ method: 'PUT', url: `/api/v1/programmes/harrowdale/donor-trees/${donorTreeId}/sealed-place`, headers: who.headers, payload });
  answers.push(answer.body);
  return { status: answer.statusCode, body: answer.json<SealedPlaceTold & { type?: string }>() };
}
const tree = async (label: string): Promise<string> => {
  const id = newId();
  await desk.post('donor-trees', { id, label, standId: place.standId, taxonId: place.taxonId });
  return id;
};

test('whoever stood there tells it blind; only the grant reads it, and sending it twice tells it once', async () => {
  const id = place.donors[0];
  const letter = await sealed(id);
  const first = await tell(id, letter);
  expect([first.status, first.body.cell]).toEqual([200, { latitude: 3.4, longitude: -28.6, degrees: 0.1, halfDiagonalM: expect.any(Number) }]);
  expect(await tell(id, letter)).toEqual(first);
  const refused = await volunteer.get(`donor-trees/${id}/exact-place`);
  expect([refused.status, refused.body.type]).toEqual([403, '/problems/place/grant-needed']);
  expect((await desk.get(`donor-trees/${id}/exact-place`)).body).toEqual(PLACE);
});

test('what the desk corrected stays, and the same letter still answers; another one is refused', async () => {
  const id = place.donors[1];
  const letter = await sealed(id);
  await tell(id, letter);
  const { headers } = await desk.get(`donor-trees/${id}/exact-place`);
  const corrected = { ...PLACE, latitude: 3.5 };
  await api.app.inject({ method: 'PUT', url: `/api/v1/programmes/harrowdale/donor-trees/${id}/exact-place`, headers: { ...desk.headers, 'if-match': String(headers['etag']) }, payload: corrected });
  expect((await tell(id, letter)).status).toBe(200);
  const other = await tell(id, await sealed(id));
  expect([other.status, other.body.type]).toEqual([409, '/problems/seal/place-told']);
  expect((await desk.get(`donor-trees/${id}/exact-place`)).body).toEqual(corrected);
});

test('two at once tell it once', async () => {
  const id = await tree('CR-9');
  const letter = await sealed(id);
  expect((await Promise.all([1, 2, 3].map(() => tell(id, letter)))).map(({ status }) => status)).toEqual([200, 200, 200]);
});

test('another tree’s letter, an unknown key and what is no place are refused, and change nothing', async () => {
  const id = await tree('CR-10');
  const [moved, unknown, none] = [await sealed(place.donors[0]), await sealed(id, PLACE, { ...pack.seal, id: newId() }), await sealed(id, { ...PLACE, latitude: 93.417001 })];
  const types = [await tell(id, moved), await tell(id, unknown), await tell(id, none), await tell(newId(), moved)].map(({ status, body }) => [status, body.type]);
  expect(types).toEqual([[422, '/problems/seal/cannot-be-opened'], [422, '/problems/seal/cannot-be-opened'], [422, '/problems/seal/holds-no-place'], [422, '/problems/seal/cannot-be-opened']]);
  expect((await tell(newId(), none)).body.type).toBe('/problems/seal/cannot-be-opened');
  expect((await desk.get(`donor-trees/${id}/exact-place`)).status).toBe(404);
});

test('a renewed key is the one in packs, and the older one still opens', async () => {
  const id = await tree('CR-11');
  const letter = await sealed(id);
  const renewed = await api.app.get(SealQueries, { strict: false }).renewed({ programmeId: place.programmeId, seesExact: false });
  expect(renewed.id).not.toBe(pack.seal.id);
  expect((await read()).seal).toEqual(renewed);
  expect((await tell(id, letter)).status).toBe(200);
});

test('the pack holds what a trip chooses from', () => {
  expect(pack.stands).toMatchObject([{ id: place.standId, name: 'Corran Ridge' }]);
  expect(pack.donorTrees.slice(0, 2)).toEqual([{ id: place.donors[0], label: 'CR-1', standId: place.standId, taxonId: place.taxonId, state: 'standing' }, { id: place.donors[1], label: 'CR-2', standId: place.standId, taxonId: place.taxonId, state: 'standing' }]);
  expect(pack.taxa).toMatchObject([{ id: place.taxonId, scientificName: 'Juniperus communis' }]);
});

test('no private half and no coordinate is in any answer, in the log, or in the trail', async () => {
  const { rows } = await asOwner(api, (sql) => sql.query<{ row: string }>('SELECT to_jsonb(a)::text AS row FROM audit a'));
  const keys = await asOwner(api, (sql) => sql.query<{ locked: Buffer }>('SELECT locked_key AS locked FROM seal_key'));
  expect([rows.length > 0, keys.rows.length]).toEqual([true, 2]);
  const texts = [...answers, ...log.lines, ...rows.map(({ row }) => row)].join('\n');
  expect(texts).not.toMatch(TRACES);
  for (const { locked } of keys.rows) for (const coding of ['base64url', 'base64', 'hex'] as const) expect(texts).not.toContain(locked.subarray(12, 36).toString(coding));
  expect(texts).not.toContain(SECRET);
});
