import { expect, test } from '@playwright/test';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

test('a funnel’s table twin has the numbers of its CSV', async ({ page }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await page.goto(`${demoUrl()}${HARROWDALE}/readings/funnels`);
  const card = page.locator('.card').filter({ has: page.getByRole('heading', { name: 'Corran Ridge' }) });
  await expect(card.getByRole('img')).toBeVisible();
  await card.getByText('The same numbers as a table').click();
  const twin = (await card.getByRole('row').allInnerTexts()).slice(1).map((row) => row.replaceAll(',', '').match(/\d+/g)?.map(Number) ?? []);

  const csv = await (await page.request.get(`${demoUrl()}${(await card.getByRole('link', { name: /CSV/ }).getAttribute('href')) ?? ''}`)).text();
  const [heading = '', ...lines] = csv.trim().split('\r\n');
  const at = (name: string): number => heading.replace('\uFEFF', '').split(',').indexOf(name);
  const reached = lines.map((line) => Number(line.split(',')[at('plants reached')]));
  expect(twin.map(([first]) => first)).toEqual(reached);
  expect(complaints).toEqual([]);
});

test('what is chosen stands in the address', async ({ page }) => {
  await signIn(page, 'volunteer');
  await page.goto(`${demoUrl()}${HARROWDALE}/readings`);
  await page.getByLabel('Species').selectOption({ label: 'yew' });
  await page.getByRole('button', { name: 'Show' }).click();
  await expect(page).toHaveURL(/taxonId=/);
  await expect(page.getByRole('heading', { name: 'Lowmire Wood' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Corran Ridge' })).toHaveCount(0);
  // Each further reading keeps it.
  await page.getByRole('link', { name: 'Funnels side by side' }).click();
  await expect(page).toHaveURL(/funnels\?taxonId=/);
  await expect(page.getByRole('heading', { name: 'Corran Ridge' })).toHaveCount(0);
});

test('the incident of the demo stands on the time axis, and a site tells both its rates', async ({ page }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'volunteer');
  await page.goto(`${demoUrl()}${HARROWDALE}/readings`);
  await expect(page.getByRole('img', { name: 'Plants at each stage over time' })).toBeVisible();
  await expect(page.getByRole('table', { name: 'Incidents where these plants stood' }).getByText('timer failed')).toBeVisible();
  await page.getByRole('link', { name: 'Planting sites' }).last().click();
  await page.getByRole('table').getByRole('link').first().click();
  await expect(page.getByText(/leaving out those not found: \d/).first()).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a planted tree leads back to its wild donor tree in one step, and that tree to all that came of it', async ({ page }) => {
  await signIn(page, 'volunteer');
  await page.goto(`${demoUrl()}${HARROWDALE}/batches?stage=planted`);
  await page.getByRole('row').nth(1).getByRole('link').first().click();
  const line = page.getByRole('region', { name: 'Family line' });
  const tree = line.getByRole('link').filter({ hasText: /^[A-Z]{2}-\d\d$/ }).first();
  const label = (await tree.innerText()).trim();
  await tree.click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(label);
  await expect(page.getByRole('heading', { name: 'All that came of it' })).toBeVisible();
});
