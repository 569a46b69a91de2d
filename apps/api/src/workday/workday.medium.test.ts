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
