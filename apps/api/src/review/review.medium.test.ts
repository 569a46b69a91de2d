import { beforeEach, describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { nursery, Desk } from '../../../../test/support/nursery.ts';
import { newId, type SessionHeaders } from '../../../../test/support/people.ts';

const api = await testApi();
let desk: Desk;
let volunteer: Desk;
let count = 0;
beforeEach(async () => {
  count += 1;
  desk = new Desk(api, await nursery(api, `review-${count}`));
  volunteer = desk.as(desk.nursery.volunteer);
});

async function send(path: string, payload: object, headers: SessionHeaders = desk.headers) {
  const answer = await api.app.inject({ method: 'POST', url: `/api/v1/programmes/${desk.nursery.programme}/${path}`, headers, payload });
  return { status: answer.statusCode, body: answer.payload === '' ? undefined : answer.json() };
}

interface Item { entryId: string; code: string; canBeAsked: boolean; batch: { id: string }; decisions: { decision: string; note: string | null; by: string; askedOf: string | null; assignedTo: string | null }[] }
const open = async (query = '') => (await desk.get(`review?${query}`)).body as Item[];
const inQueue = ({ entryId, code, batch }: Item) => ({ id: newId(), entryId, code, batchId: batch.id });

/** A volunteer throws out more than is there: three times, in three trays. */
async function threeDoubts(): Promise<Item[]> {
  for (let n = 0; n < 3; n += 1) {
    const { batchId } = await desk.stick(10, { placeId: desk.nursery.trays[n], recipeVersionId: desk.nursery.recipeVersionId }, `2025-10-0${n + 1}`);
    await volunteer.write([volunteer.entry('2025-11-01', { kind: 'died', batchId, n: 12, cause: 'rotted' })], { door: 'outbox' });
  }
  return open();
}

test('doubts are grouped by kind, and one kind can be asked for', async () => {
  expect(await threeDoubts()).toHaveLength(3);
  expect((await desk.get('review/groups')).body).toEqual([{ code: 'took-more', n: 3, oldest: '2025-11-01', mine: 0 }]);
  expect(await open('code=took-more')).toHaveLength(3);
  expect(await open('code=two-readings')).toEqual([]);
  expect((await desk.get('review?code=whatever')).status).toBe(422);
});

test('many are accepted for one reason: all of them or none, once however often they are sent', async () => {
  const [one, other, third] = await threeDoubts();
  if (!one || !other || !third) throw new Error('three doubts');
  const items = [inQueue(one), inQueue(other)];
  expect((await send('review/many', { decision: 'accepted', note: 'counted again by two', items: [inQueue(third), { ...inQueue(third), entryId: newId() }] })).status).toBe(404);
  expect(await open()).toHaveLength(3);

  const many = { decision: 'accepted', note: 'counted again by two', items };
  expect([(await send('review/many', many)).status, (await send('review/many', many)).status]).toEqual([204, 204]);
  expect((await open()).map(({ entryId }) => entryId)).toEqual([third.entryId]);
  expect((await send('review/many', { ...many, note: 'another reason' })).body.type).toBe('/problems/review/id-reused');
  expect((await send('review/many', { ...many, items: [] })).status).toBe(422);
});

test('a question reaches whoever wrote the entry, and nobody else may answer it', async () => {
  const [item] = await threeDoubts();
  if (!item) throw new Error('a doubt');
  expect(item.canBeAsked).toBe(true);
  expect((await send('review', { ...inQueue(item), decision: 'asked' })).status, 'a question without words').toBe(422);
  const asked = { ...inQueue(item), decision: 'asked', note: 'Were two of the next row with them?' };
  expect((await send('review', asked)).status).toBe(204);

  expect((await desk.get('questions')).body).toEqual([]);
  expect((await volunteer.get('questions')).body).toMatchObject([{ id: asked.id, question: asked.note, code: 'took-more', kind: 'died', batch: { id: item.batch.id } }]);

  const answer = { id: newId(), answer: 'Yes, two of T2.' };
  expect((await send(`questions/${asked.id}/answer`, answer)).body.type).toBe('/problems/record/unknown');
  const mine = desk.nursery.volunteer.headers;
  expect([(await send(`questions/${asked.id}/answer`, answer, mine)).status, (await send(`questions/${asked.id}/answer`, answer, mine)).status]).toEqual([204, 204]);
  expect((await send(`questions/${asked.id}/answer`, { id: newId(), answer: 'No.' }, mine)).body.type).toBe('/problems/review/answered-already');

  expect((await volunteer.get('questions')).body).toEqual([]);
  const [still] = (await open()).filter(({ entryId }) => entryId === item.entryId);
  expect(still?.decisions.map(({ decision, note }) => [decision, note])).toEqual([['answered', 'Yes, two of T2.'], ['asked', asked.note]]);
});

test('a question that was decided without its answer is no longer asked', async () => {
  const [item] = await threeDoubts();
  if (!item) throw new Error('a doubt');
  await send('review', { ...inQueue(item), decision: 'asked', note: 'How come?' });
  await send('review', { ...inQueue(item), decision: 'accepted' });
  expect((await volunteer.get('questions')).body).toEqual([]);
});

test('what is assigned stays assigned while it is asked about', async () => {
  const [item] = await threeDoubts();
  if (!item) throw new Error('a doubt');
  const { personId } = desk.nursery.coordinator;
  await send('review', { ...inQueue(item), decision: 'assigned', assignedTo: personId });
  await send('review', { ...inQueue(item), decision: 'asked', note: 'How come?' });
  expect(await open(`assignedTo=${personId}`)).toHaveLength(1);
  expect((await desk.get('review/groups')).body).toMatchObject([{ n: 3, mine: 1 }]);
});

test('what a phone could not get booked is told as a note, on a batch or on nothing, until somebody is done with it', async () => {
  const { batchId } = await desk.stick(10);
  const told = (day: string, about: object) => volunteer.entry(day, { kind: 'noted', ...about, text: 'Potted up: 12 of CR-1', notBooked: { id: newId(), code: 'batch/label-taken' } });
  const [ofBatch, ofNothing] = [told('2025-11-02', { batchId }), told('2025-11-03', {})];
  const again = [ofBatch, ofNothing, volunteer.entry('2025-11-02', { kind: 'noted', batchId, text: 'green' })];
  expect((await volunteer.write(again, { door: 'outbox' })).map(({ status }) => status)).toEqual(['written', 'written', 'written']);
  expect((await volunteer.write(again, { door: 'outbox' })).map(({ status }) => status)).toEqual(['already', 'already', 'already']);
  expect((await desk.get('review/groups')).body).toEqual([{ code: 'not-booked', n: 2, oldest: '2025-11-02', mine: 0 }]);
  const items = await open('code=not-booked');
  expect(items).toMatchObject([{ batch: { id: batchId }, said: { text: 'Potted up: 12 of CR-1' }, canBeAsked: true }, { batch: null }]);

  expect((await send('review', { ...inQueue(items[0] as Item), decision: 'accepted', note: 'written by hand' })).status).toBe(204);
  await volunteer.write([volunteer.entry('2025-11-02', { kind: 'withdrawn', entryId: ofNothing.id, sawVersion: ofNothing.id, reason: 'it went in after all' })], { door: 'outbox' });
  expect(await open()).toEqual([]);
  expect((await volunteer.post('entries', { door: 'outbox', entries: [volunteer.entry('2025-11-02', { kind: 'noted', text: 'about nothing' })] })).status).toBe(422);
  expect((await volunteer.post('entries', { door: 'outbox', entries: [volunteer.entry('2025-11-02', { kind: 'noted', batchId, notBooked: { id: newId() } })] })).status).toBe(422);
});

describe('a note of what a phone could not get booked', () => {
  const note = (day: string, of: string, about: object, code?: string) => volunteer.entry(day, { kind: 'noted', ...about, text: `Dead: 3 (${day})`, notBooked: { id: of, ...(code ? { code } : {}) } });
  const fromPhone = async (...entries: ReturnType<typeof note>[]) => (await volunteer.write(entries, { door: 'outbox' })).map(({ status }) => status);
  const codes = async () => (await open()).map(({ code }) => code);

  test('is settled by itself once that is told after all, and by a newer note about the same', async () => {
    const { batchId } = await desk.stick(10);
    const died = volunteer.entry('2025-11-02', { kind: 'died', batchId, n: 3, cause: 'rotted' });
    expect(await fromPhone(note('2025-11-02', died.id, { batchId }))).toEqual(['written']);
    const newer = note('2025-11-03', died.id, { batchId });
    await fromPhone(newer);
    expect((await open()).map(({ entryId }) => entryId)).toEqual([newer.id]);
    expect(await fromPhone(died)).toEqual(['written']);
    expect(await open()).toEqual([]);
    expect((await desk.get('review/groups')).body).toEqual([]);
  });

  test('that a coordinator was done with leaves a question when it is told after all, until it is withdrawn or found to be right', async () => {
    const { batchId } = await desk.stick(10);
    const [twice, once] = [3, 2].map((n) => volunteer.entry('2025-11-02', { kind: 'died', batchId, n, cause: 'rotted' }));
    if (!twice || !once) throw new Error('two');
    await fromPhone(note('2025-11-02', twice.id, { batchId }), note('2025-11-02', once.id, { batchId }));
    for (const item of await open()) await send('review', { ...inQueue(item), decision: 'accepted', note: 'written by hand' });
    await desk.write([desk.entry('2025-11-02', { kind: 'died', batchId, n: 3, cause: 'rotted' })]);
    expect(await open()).toEqual([]);

    expect(await fromPhone(twice, once)).toEqual(['written', 'written']);
    const items = await open('code=told-after-all');
    expect(items).toMatchObject([twice, once].toSorted((a, b) => (a.id < b.id ? -1 : 1)).map(({ id }) => ({ entryId: id, batch: { id: batchId }, decisions: [{ decision: 'accepted', note: 'written by hand' }] })));
    await desk.write([desk.entry('2025-11-03', { kind: 'withdrawn', entryId: twice.id, sawVersion: twice.id, reason: 'written by hand already' })], { confirm: [] });
    expect((await open()).map(({ entryId }) => entryId)).toEqual([once.id]);
    const [right] = await open();
    expect((await send('review', { ...inQueue(right as Item), decision: 'accepted' })).status).toBe(204);
    expect(await codes()).toEqual([]);
  });

  test('stays open where its id is another entry’s: what is in the books is not what was meant', async () => {
    const { batchId } = await desk.stick(10);
    const died = volunteer.entry('2025-11-02', { kind: 'died', batchId, n: 3, cause: 'rotted' });
    await fromPhone(died);
    const told = note('2025-11-02', died.id, { batchId }, 'entry/id-reused');
    await fromPhone(told);
    expect(await codes()).toEqual(['not-booked']);
    const [item] = await open();
    await send('review', { ...inQueue(item as Item), decision: 'accepted' });
    expect(await codes()).toEqual([]);
  });

  test('keeps what was decided about an earlier one in sight', async () => {
    const { batchId } = await desk.stick(10);
    const of = newId();
    await fromPhone(note('2025-11-02', of, { batchId }));
    const [first] = await open();
    await send('review', { ...inQueue(first as Item), decision: 'accepted', note: 'written by hand' });
    await fromPhone(note('2025-11-03', of, { batchId }));
    expect(await open()).toMatchObject([{ code: 'not-booked', day: '2025-11-03', decisions: [{ decision: 'accepted', note: 'written by hand' }] }]);
  });
});

test('what changed since the last look, by the day it arrived; said by oneself, and never back', async () => {
  await threeDoubts();
  const news = (await desk.get('news')).body;
  expect(news).toMatchObject({ seenUntil: null, entries: 6, moreDays: 0, days: [{ entries: 6, kinds: [{ kind: 'died', n: 3 }, { kind: 'stuck', n: 3 }], trips: 0, sheets: 0 }] });
  const { day } = news.days[0];
  const first = await desk.get(`news/entries?day=${day}&limit=4`);
  expect(first.body.map(({ kind }: { kind: string }) => kind)).toEqual(['died', 'stuck', 'died', 'stuck']);
  const rest = await api.app.inject({ method: 'GET', url: /<([^>]+)>/.exec(String(first.headers['link']))?.[1] ?? '', headers: desk.headers });
  expect(rest.json()).toHaveLength(2);

  expect((await send('news/seen', { until: news.asOf })).status).toBe(204);
  expect((await desk.get('news')).body).toMatchObject({ seenUntil: news.asOf, entries: 0, days: [] });
  await send('news/seen', { until: '2020-01-01T00:00:00Z' });
  expect((await desk.get('news')).body.seenUntil).toBe(news.asOf);
  await desk.stick(5, {}, '2025-12-01');
  expect((await desk.get('news')).body.entries).toBe(1);
  expect((await volunteer.get('news')).status).toBe(403);
});
