import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { member, newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const anna = await member(api, 'volunteer');
const [mine, theirs] = [new Asker(api, anna.headers), new Asker(api, await signedIn(api, 'volunteer'))];
const build = new Build(desk);

test('a volunteer tells a workday, and children are only counted', async () => {
  const house = await build.place();
  const workday = { id: newId(), day: '2026-03-29', placeId: house.id, tasks: 'sticking', others: 6, children: 11, hours: 4.5 };
  const made = await mine.post('workdays', workday);

  expect(made).toMatchObject({ status: 201, body: { ...workday, madeBy: anna.personId, entries: 0 } });
  expect((await mine.post('workdays', workday)).body).toEqual(made.body);
  expect((await theirs.get('workdays')).body).toContainEqual(made.body);
  expect((await mine.post('workdays', { ...workday, id: newId(), placeId: newId() })).body.type).toBe('/problems/record/no-such-place');
});

test('a volunteer changes their own workday, the desk everybody’s', async () => {
  const { body, etag } = await mine.post('workdays', { id: newId(), day: '2026-04-01' });
  const content = { day: '2026-04-02', tasks: 'potting' };

  expect((await theirs.put(`workdays/${body.id}`, content, etag)).body.type).toBe('/problems/record/not-yours');
  const changed = await mine.put(`workdays/${body.id}`, content, etag);
  expect(changed.body).toMatchObject(content);
  expect((await desk.put(`workdays/${body.id}`, { ...content, hours: 3 }, changed.etag)).body.hours).toBe(3);
  expect((await desk.put(`workdays/${body.id}`, content, changed.etag)).status).toBe(412);
});

test('a partner is told once by name, and ends after it begins', async () => {
  const partner = await build.partner();
  const { etag } = await desk.get(`partners/${partner.id}`);

  expect((await desk.post('partners', { id: newId(), name: partner.name, since: '2025-01-01' })).body.type).toBe('/problems/record/name-taken');
  expect((await desk.put(`partners/${partner.id}`, { name: 'A', since: '2025-01-02', until: '2025-01-01' }, etag)).body.errors[0].pointer).toBe('#/until');
  expect((await desk.put(`partners/${partner.id}`, { name: 'A', since: '2025-01-02', until: '2025-06-01' }, etag)).body).toMatchObject({ since: '2025-01-02', until: '2025-06-01' });
  expect((await mine.put(`partners/${partner.id}`, { name: 'A', since: '2025-01-02' }, '*')).status).toBe(403);
});

test('people are listed by name, once each, and can be taken off again', async () => {
  const { body, etag } = await mine.post('workdays', { id: newId(), day: '2026-04-03', personIds: [anna.personId, anna.personId] });
  expect(body.personIds).toEqual([anna.personId]);
  expect((await mine.put(`workdays/${body.id}`, { day: '2026-04-03', personIds: [newId()] }, etag)).body.type).toBe('/problems/record/no-such-person');
  expect((await mine.put(`workdays/${body.id}`, { day: '2026-04-03' }, etag)).body.personIds).toEqual([]);
});

test('the one page adds up what the day’s entries booked, species by species, and follows corrections', async () => {
  const house = await build.place();
  const [juniper, yew] = [await build.donorTree(), await build.donorTree()];
  const { body: workday } = await mine.post('workdays', { id: newId(), day: '2026-04-04', placeId: house.id, tasks: 'potting', personIds: [anna.personId], others: 2, children: 5, hours: 2.5 });
  const log = async (sayings: object[], workdayId?: string) => {
    const entries = sayings.map((saying) => ({ id: newId(), observedOn: '2026-04-04', writtenAt: '2026-04-04T10:00:00Z', ...(workdayId && { workdayId }), saying }));
    const { body } = await desk.post('entries', { entries });
    expect(body.entries.map(({ status }: { status: string }) => status)).toEqual(entries.map(() => 'written'));
    return entries.map(({ id }) => id);
  };
  const stuck = (donorTreeId: string, n: number) => ({ kind: 'stuck', batchId: newId(), stickingId: newId(), n, placeId: house.id, donorTreeId });
  const [one, two, three] = [stuck(juniper.id, 30), stuck(juniper.id, 10), stuck(yew.id, 8)];
  await log([one]);
  const ids = await log([
    two, three,
    { kind: 'counted', batchId: one.batchId, alive: 25, look: 'tug', dead: [{ n: 3, cause: 'dry' }] },
    { kind: 'potted', batchId: one.batchId, n: 12, toBatchId: newId(), placeId: house.id },
    { kind: 'died', batchId: three.batchId, n: 1, cause: 'mould' },
  ], workday.id);

  const summary = (await theirs.get(`workdays/${workday.id}/summary`)).body;
  expect(summary).toMatchObject({ people: [anna.name], adults: 3, children: 5, hours: 2.5, peopleHours: 7.5, entries: 5, place: house.name });
  const of = (taxonId: string) => (taxa: { taxonId: string }[]) => taxa.find((one) => one.taxonId === taxonId);
  expect(of(juniper.taxonId)(summary.species)).toMatchObject({ stuck: 10, potted: 12, died: 3, unaccounted: 2, batchesCounted: 1, countedAlive: 25, donorTrees: 1, planted: 0 });
  expect(of(yew.taxonId)(summary.species)).toMatchObject({ stuck: 8, died: 1, potted: 0, batchesCounted: 0 });

  const counted = ids[2]!;
  await log([{ kind: 'replaced', entryId: counted, sawVersion: counted, reason: 'miscounted', instead: { observedOn: '2026-04-04', saying: { kind: 'counted', batchId: one.batchId, alive: 28, look: 'tug' } } }]);
  const mended = (await theirs.get(`workdays/${workday.id}/summary`)).body;
  expect(of(juniper.taxonId)(mended.species)).toMatchObject({ died: 0, unaccounted: 2, countedAlive: 28 });
});
