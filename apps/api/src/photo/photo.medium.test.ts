import { verify } from '@sprigline/api';
import { appendFile, readdir, rm, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, type Member, member, newId } from '../../../../test/support/people.ts';
import { jpegOf, photoOfAPhone, tracesIn } from '../../../../test/support/pictures.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const [coordinator, volunteer] = [place.coordinator, place.volunteer];
const guide = await member(api, 'volunteer', 'harrowdale', { seesExact: true });
const { batchId } = await desk.stick(60);
const [plain, other] = await Promise.all([jpegOf(640, 480), jpegOf(640, 480, '#301')]);

const BASE = '/api/v1/programmes/harrowdale';
const ask = (method: 'GET' | 'POST', path: string, who: Member = coordinator, headers: Record<string, string> = {}, payload?: object) =>
  api.app.inject({ method, url: `${BASE}/${path}`, headers: { ...who.headers, ...headers }, ...(payload && { payload }) });
function put(id: string, told: Record<string, string>, sent: Buffer = plain, { who = coordinator, type = 'image/jpeg' } = {}) {
  const query = new URLSearchParams({ takenOn: '2026-03-01', ...told });
  return api.app.inject({ method: 'PUT', url: `${BASE}/photos/${id}?${query}`, headers: { ...who.headers, 'content-type': type }, payload: sent });
}
const listed = async (path: string, who: Member = coordinator): Promise<{ id: string }[]> => (await ask('GET', path, who)).json();
const files = async (): Promise<string[]> => (await readdir(api.photoFolder, { recursive: true }).catch(() => [])).filter((name) => /\.\w+$/.test(name)).sort();
const withdraw = (id: string, who: Member = coordinator) => ask('POST', `photos/${id}/withdrawal`, who, {}, { reason: 'shows a child' });

const kept: string[] = [];
async function keep(told: Record<string, string>, sent = plain, who = coordinator): Promise<string> {
  const id = newId();
  const answer = await put(id, told, sent, { who });
  expect(answer.statusCode, answer.body).toBe(200);
  kept.push(id);
  return id;
}
afterEach(async () => {
  for (const id of kept.splice(0)) await withdraw(id);
  expect(await files()).toEqual([]);
});

describe('a photo', () => {
  test('is kept with what it shows, and without a word of where and by what it was taken, on disk and as answered', async () => {
    const sent = await photoOfAPhone();
    const id = newId();
    const answer = await put(id, { batchId }, sent, { who: volunteer });
    kept.push(id);
    expect(answer.json()).toEqual({
      id, batchId, donorTreeId: null, placeId: null, note: null, takenOn: '2026-03-01', kind: 'plain', showsWhere: false, width: 300, height: 400,
      takenBy: volunteer.name, receivedAt: expect.stringMatching(/^\d{4}-.*Z$/), frame: null, isWithdrawn: false,
    });
    const [large, small] = [await ask('GET', `photos/${id}/large`, volunteer), await ask('GET', `photos/${id}/small`, volunteer)];
    for (const { rawPayload, headers } of [large, small]) {
      expect(tracesIn(rawPayload)).toEqual([]);
      expect(headers).toMatchObject({ 'content-type': 'image/jpeg', 'cache-control': 'private, no-cache', 'x-content-type-options': 'nosniff', 'content-disposition': 'inline; filename="photo-2026-03-01.jpg"' });
    }
    expect([await sharp(large.rawPayload).metadata(), await sharp(small.rawPayload).metadata()].map(({ width, height }) => [width, height])).toEqual([[300, 400], [240, 320]]);
    expect(await files()).toHaveLength(2);
  });

  test('is answered 304 to who has it already', async () => {
    const id = await keep({ batchId });
    const { headers } = await ask('GET', `photos/${id}/small`);
    const again = await ask('GET', `photos/${id}/small`, coordinator, { 'if-none-match': String(headers['etag']) });
    expect([again.statusCode, again.body, headers['etag']]).toEqual([304, '', expect.stringMatching(/^"[\w-]{43}"$/)]);
  });

  test('sent twice, also at once, is kept once; with another picture or of something else it is refused, and leaves no file', async () => {
    const id = newId();
    kept.push(id);
    const answers = await Promise.all(Array.from({ length: 4 }, () => put(id, { batchId })));
    expect(answers.map(({ statusCode }) => statusCode)).toEqual([200, 200, 200, 200]);
    expect(new Set(answers.map(({ body }) => body)).size).toBe(1);
    for (const answer of [await put(id, { batchId }, other), await put(id, { placeId: place.trays[0] }), await put(id, { batchId, takenOn: '2026-03-02' }), await put(id, { batchId }, plain, { who: volunteer })]) {
      expect([answer.statusCode, answer.json().type]).toEqual([422, '/problems/record/id-reused']);
    }
    const rival = newId();
    kept.push(rival);
    const rivals = await Promise.all([put(rival, { batchId }, plain), put(rival, { batchId }, other)]);
    expect(rivals.map(({ statusCode }) => statusCode).sort()).toEqual([200, 422]);
    expect(await listed(`batches/${batchId}/photos`)).toHaveLength(2);
    // Of the two pictures the one that lost is gone again.
    const hashes = new Set(await Promise.all([id, rival].map(async (one) => (await ask('GET', `photos/${one}/large`)).headers['etag'])));
    expect(await files()).toHaveLength(hashes.size * 2);
  });

  test('of a picture that is there already takes no room, and goes with the last one that shows it', async () => {
    const [one, second] = [await keep({ batchId }), await keep({ placeId: place.trays[0], kind: 'portrait' })];
    expect(await files()).toHaveLength(2);
    expect((await withdraw(one)).statusCode).toBe(204);
    expect((await ask('GET', `photos/${second}/large`)).statusCode).toBe(200);
    await withdraw(second);
    expect(await files()).toEqual([]);
  });

  test('belongs to a note, and reads as the note does now', async () => {
    const note = desk.entry('2026-03-01', { kind: 'noted', batchId, text: 'grey fluff on two' });
    await desk.write([note]);
    const ids = [await keep({ batchId, noteId: note.id }), await keep({ batchId, noteId: note.id }, other)];
    const notes = async () => (await ask('GET', `batches/${batchId}/photos`)).json<{ id: string; note: unknown }[]>().map((photo) => photo.note);
    expect((await listed(`batches/${batchId}/photos`)).map(({ id }) => id)).toEqual(ids.toReversed());
    expect(await notes()).toEqual([{ entryId: note.id, text: 'grey fluff on two' }, { entryId: note.id, text: 'grey fluff on two' }]);
    await desk.write([desk.entry('2026-03-01', { kind: 'replaced', entryId: note.id, sawVersion: note.id, reason: 'looked again', instead: { observedOn: '2026-03-01', saying: { kind: 'noted', batchId, text: 'only dust' } } })]);
    expect(await notes()).toEqual([{ entryId: note.id, text: 'only dust' }, { entryId: note.id, text: 'only dust' }]);
  });

  test('lists come in parts, the newest day first', async () => {
    const ids: string[] = [];
    for (const takenOn of ['2026-03-01', '2026-05-01', '2026-04-01']) ids.push(await keep({ batchId, takenOn }));
    const first = await ask('GET', `batches/${batchId}/photos?limit=2`);
    const next = /<\/api\/v1\/programmes\/harrowdale\/([^>]+)>/.exec(String(first.headers['link']))?.[1] ?? '';
    expect([...first.json<{ id: string }[]>(), ...(await listed(next))].map(({ id }) => id)).toEqual([ids[1], ids[2], ids[0]]);
  });
});

describe('refused', () => {
  test.each([
    ['a batch that is not there', { batchId: newId() }, 404, 'batch/unknown'],
    ['a donor tree that is not there', { donorTreeId: newId() }, 422, 'record/no-such-donor-tree'],
    ['a place that is not there', { placeId: newId() }, 422, 'record/no-such-place'],
    ['a note that is not there', { batchId, noteId: newId() }, 422, 'photo/no-such-note'],
    ['somebody who is not there', { batchId, takenBy: newId() }, 422, 'record/no-such-person'],
    ['nothing that it shows', {}, 422, 'http/unfit-request'],
    ['two things at once', { batchId, placeId: place.trays[0] }, 422, 'http/unfit-request'],
    ['a portrait of a batch', { batchId, kind: 'portrait' }, 422, 'http/unfit-request'],
    ['a word that nobody knows', { batchId, caption: 'x' }, 422, 'http/unfit-request'],
  ])('%s', async (_, told, status, code) => {
    const answer = await put(newId(), told);
    expect([answer.statusCode, answer.json().type]).toEqual([status, `/problems/${code}`]);
  });

  test('what is no picture, whatever it is called', async () => {
    for (const type of ['image/jpeg', 'image/svg+xml', 'application/octet-stream']) {
      const answer = await put(newId(), { batchId }, Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>'), { type });
      expect([answer.statusCode, answer.json().type]).toEqual([422, '/problems/photo/not-a-picture']);
    }
  });

  test('more than 15 MB, and a picture sent to any other route, before it is read', async () => {
    const large = await put(newId(), { batchId }, Buffer.concat([plain, Buffer.alloc(15 * 1024 * 1024)]));
    expect([large.statusCode, large.json().type]).toEqual([413, '/problems/photo/too-large']);
    const elsewhere = await api.app.inject({ method: 'POST', url: `${BASE}/stands`, headers: { ...coordinator.headers, 'content-type': 'image/jpeg' }, payload: plain });
    expect([elsewhere.statusCode, elsewhere.json().type]).toEqual([415, '/problems/http/json-only']);
  });
});

describe('where a wild tree stands', () => {
  test('is kept back unless somebody says that the photo shows no place; who took it may tell it blind', async () => {
    const [donorTreeId] = place.donors;
    const wide = await keep({ donorTreeId }, plain, volunteer);
    const close = await keep({ donorTreeId, showsWhere: 'no' }, other, volunteer);
    expect((await listed(`donor-trees/${donorTreeId}/photos`, volunteer)).map(({ id }) => id)).toEqual([close]);
    expect((await listed(`donor-trees/${donorTreeId}/photos`, guide)).map(({ id }) => id)).toEqual([close, wide]);
    for (const size of ['large', 'small']) {
      expect((await ask('GET', `photos/${wide}/${size}`, volunteer)).statusCode).toBe(404);
      expect((await ask('GET', `photos/${wide}/${size}`, guide)).statusCode).toBe(200);
    }
    // What is taken down keeps the picture that another photo shows, whoever may see that one.
    const same = await keep({ donorTreeId, showsWhere: 'no' }, plain, volunteer);
    await withdraw(same);
    expect((await ask('GET', `photos/${wide}/large`, guide)).statusCode).toBe(200);
  });

  test('no photo at all is shown to a partner or to another programme', async () => {
    const id = await keep({ batchId });
    const partner = await member(api, 'partner', 'harrowdale', { partnerId: place.partnerId });
    const outside = await member(api, 'owner', 'winterbeck');
    for (const who of [partner, outside]) {
      for (const path of [`photos/${id}/large`, `batches/${batchId}/photos`]) expect((await ask('GET', path, who)).statusCode).toBeGreaterThan(402);
    }
    const theirs = await api.app.inject({ url: `/api/v1/programmes/winterbeck/photos/${id}/large`, headers: outside.headers });
    expect(theirs.statusCode).toBe(404);
  });
});

test('taken down, it is in no list, its picture is gone for good, and the trail says who did so', async () => {
  const id = await keep({ batchId });
  expect((await withdraw(id, volunteer)).statusCode).toBe(403);
  expect([(await withdraw(id)).statusCode, (await withdraw(id)).statusCode]).toEqual([204, 204]);
  expect(await listed(`batches/${batchId}/photos`)).toEqual([]);
  const gone = await ask('GET', `photos/${id}/large`);
  expect([gone.statusCode, gone.json().type]).toEqual([410, '/problems/photo/withdrawn']);
  // A phone that sends it again learns so, and brings nothing back.
  expect((await put(id, { batchId })).json()).toMatchObject({ id, isWithdrawn: true });
  expect(await files()).toEqual([]);
  const trail = await asOwner(api, async (sql) => (await sql.query(`SELECT act, person_id, facts FROM audit WHERE subject_id = $1`, [id])).rows);
  expect(trail).toEqual([{ act: 'photo.withdrawn', person_id: coordinator.personId, facts: { reason: 'shows a child' } }]);
});

describe('verify', () => {
  const sentences = async () => (await verify({ ...api.database, photoFolder: api.photoFolder })).map(({ sentence }) => sentence);

  test('names a photo whose picture is missing, is another one, and a picture that no photo names', async () => {
    const [id, second] = [await keep({ batchId }), await keep({ batchId }, other)];
    expect(await sentences()).toEqual([]);
    const own = (await files()).filter((name) => name.endsWith('.jpg'));
    const [first = '', ...rest] = own;
    await rm(join(api.photoFolder, first));
    await appendFile(join(api.photoFolder, rest[0] ?? ''), 'x');
    const left = join(api.photoFolder, place.programmeId, 'left-over.jpg');
    await writeFile(left, plain);
    expect(await sentences()).toHaveLength(2);
    await utimes(left, 0, 0);
    const found = await sentences();
    await rm(left);
    expect(found).toHaveLength(3);
    expect(found).toContain(`The picture ${place.programmeId}/left-over.jpg is of no photo.`);
    expect(found.filter((sentence) => /^The picture .+\.jpg of photo [\w-]+ is missing\.$/.test(sentence))).toHaveLength(1);
    expect(found.filter((sentence) => /^The picture .+\.jpg of photo [\w-]+ is not what was kept under that name\.$/.test(sentence))).toHaveLength(1);
    expect(found.filter((sentence) => sentence.includes(id) || sentence.includes(second))).toHaveLength(2);
    const lost = (await Promise.all([id, second].flatMap((one) => ['large', 'small'].map((size) => ask('GET', `photos/${one}/${size}`))))).filter(({ statusCode }) => statusCode !== 200);
    expect(lost.map((answer) => answer.json().type)).toEqual(['/problems/photo/file-missing']);
  });
});

describe('where a tray lies in its portrait', () => {
  const frame = { left: 4, top: 5, right: 97, bottom: 96, labelSide: 'left' };
  const tell = (id: string, told: object, who: Member = volunteer) => api.app.inject({ method: 'PUT', url: `${BASE}/photos/${id}/frame`, headers: who.headers, payload: told });
  const at = { placeId: place.trays[0] };

  test('is told by whoever looks at it; the last telling holds, and stands with the portrait', async () => {
    const [portrait, beside] = [await keep({ ...at, kind: 'portrait' }), await keep(at, other)];
    expect((await tell(portrait, frame)).statusCode).toBe(204);
    expect((await tell(portrait, { ...frame, top: 7 }, coordinator)).statusCode).toBe(204);
    expect(await listed(`places/${place.trays[0]}/photos?kind=portrait`)).toMatchObject([{ id: portrait, frame: { ...frame, top: 7 } }]);
    expect(await listed(`places/${place.trays[0]}/photos?kind=plain`)).toMatchObject([{ id: beside, frame: null }]);
  });

  test('is refused of another photo, of one taken down, of none, and where nothing would lie in it', async () => {
    const [portrait, beside] = [await keep({ ...at, kind: 'portrait' }), await keep(at, other)];
    await withdraw(portrait);
    const answers = await Promise.all([tell(beside, frame), tell(portrait, frame), tell(newId(), frame), tell(beside, { ...frame, right: 9 }), tell(beside, { ...frame, bottom: 101 })]);
    expect(answers.map((answer) => [answer.statusCode, answer.json().type.split('/').at(-1)])).toEqual([[409, 'not-a-portrait'], [410, 'withdrawn'], [404, 'unknown'], [422, 'unfit-request'], [422, 'unfit-request']]);
  });
});
