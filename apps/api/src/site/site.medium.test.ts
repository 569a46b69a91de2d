import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const volunteer = new Asker(api, await signedIn(api, 'volunteer'));
const build = new Build(desk);

test('a site is made with its plots, and only the cell of where it lies is kept', async () => {
  const partner = await build.partner();
  const plots = [{ id: newId(), name: 'West', walkOrder: 2 }, { id: newId(), name: 'East', walkOrder: 1 }];
  const site = { id: newId(), name: 'Skell Gill foot', partnerId: partner.id, land: 'the school', cell: { latitude: 54.123456, longitude: -2.234567, degrees: 0.01 }, plots };
  const made = await desk.post('sites', site);

  expect(made).toMatchObject({
    status: 201,
    body: { name: 'Skell Gill foot', partnerId: partner.id, cell: { latitude: 54.12, longitude: -2.23, degrees: 0.01 }, plots: [{ name: 'East' }, { name: 'West' }] },
  });
  expect(await desk.post('sites', site)).toMatchObject({ status: 201, body: made.body });
  expect((await volunteer.get('sites')).body).toContainEqual(made.body);
  expect((await volunteer.post('sites', { ...site, id: newId(), name: 'Other' })).status).toBe(403);
});

test('plots are added, and a site is edited against the version that was seen', async () => {
  const site = await build.site();
  const plot = { id: newId(), name: 'P1' };
  await desk.post(`sites/${site.id}/plots`, plot);
  const added = await desk.post(`sites/${site.id}/plots`, plot);
  expect(added.body.plots).toMatchObject([{ id: plot.id, name: 'P1' }]);

  const content = { name: site.name, land: 'the commoners', cell: null };
  expect((await desk.put(`sites/${site.id}`, content)).status).toBe(428);
  expect((await desk.put(`sites/${site.id}`, content, '"old"')).status).toBe(412);
  expect((await desk.put(`sites/${site.id}`, content, added.etag)).body).toMatchObject({ land: 'the commoners', cell: null, plots: [{ name: 'P1' }] });
  expect((await desk.post('sites', { id: newId(), name: 'Odd', cell: { latitude: 1, longitude: 1, degrees: 0.05 } })).status).toBe(422);
});
