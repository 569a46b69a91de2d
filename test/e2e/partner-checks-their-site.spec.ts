import { expect, type Page, test } from '@playwright/test';
import { unfitIn } from './product/fitness.ts';
import { answerForm } from './product/forms.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

// As on the phone of somebody who stands at their site.
test.use({ viewport: { width: 320, height: 740 }, colorScheme: 'dark' });

const open = (page: Page, path: string) => page.goto(`${demoUrl()}${HARROWDALE}${path}`);

test('a partner reads what came of their stand, and is shown no other', async ({ page, browser }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'partner');
  await page.getByRole('link', { name: 'Corran Ridge' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Corran Ridge');
  await page.getByRole('link', { name: 'What its cuttings came to' }).click();
  await expect(page.getByRole('img', { name: /Corran Ridge/ }).first()).toBeVisible();
  await expect(page.getByRole('heading', { name: 'How many trees are in the plants' })).toBeVisible();
  // On the way from page to page the title comes last: until then it is the last page's, then none.
  await expect(page).toHaveTitle(/^Corran Ridge: What survives/);
  expect(await unfitIn(page)).toEqual([]);

  await open(page, '/stands');
  await expect(page.getByRole('link', { name: 'Skell Gill' })).toBeVisible();
  await expect(page.getByText('Winterbeck Scar')).toHaveCount(0);
  const house = await browser.newPage();
  await signIn(house, 'coordinator');
  const stands = (await (await house.request.get(`${demoUrl()}/api/v1${HARROWDALE}/stands`)).json()) as { id: string; name: string }[];
  const other = stands.find(({ name }) => name === 'Winterbeck Scar')?.id ?? '';
  for (const path of [`/stands/${other}`, `/readings/stands/${other}`]) {
    expect((await open(page, path))?.status(), path).toBe(404);
    await expect(page.getByText('Winterbeck')).toHaveCount(0);
  }
  expect(complaints).toEqual([]);
});

test('a partner checks the trees at their site, one batch and then all of them', async ({ page }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'partner');
  await page.getByRole('link', { name: /Upper Skell enclosure: its plots/ }).click();
  await page.getByRole('link', { name: 'See them batch by batch' }).click();
  const row = page.getByRole('row').filter({ hasText: 'T078' });
  await row.getByRole('link', { name: 'Check T078' }).click();
  await expect(page.getByText('clean them before and after')).toBeVisible();
  await answerForm(page, { 'How many are alive': '3' }, 'Write the check', 'T078');
  await expect(page.getByRole('status').filter({ hasText: 'Your check is in the books' })).toBeVisible();

  await open(page, '/sites');
  await page.getByRole('link', { name: 'Upper Skell enclosure' }).click();
  await page.getByRole('link', { name: 'Check the trees here' }).click();
  await expect(page).toHaveTitle(/^Write the check/);
  expect(await unfitIn(page)).toEqual([]);
  await answerForm(page, { 'Alive: T189': '2', 'Alive: T200': '1', 'Not found: T200': '1' }, 'Write the check', 'Check every batch of Upper Skell enclosure');
  await expect(page.getByRole('status').filter({ hasText: '2 lines are written' })).toBeVisible();
  expect(complaints).toEqual([]);
});

test('no way that a partner is shown leads to a refusal', async ({ page }) => {
  await signIn(page, 'partner');
  const [seen, refused] = [new Set<string>(), [] as string[]];
  const waiting = [HARROWDALE];
  for (let path = waiting.shift(); path !== undefined; path = waiting.shift()) {
    const answer = await page.request.get(`${demoUrl()}${path}`);
    if (answer.status() !== 200) refused.push(`${path} answered ${answer.status()}`);
    const ways = [...(await answer.text()).matchAll(/href="((?:\/api\/v1)?\/programmes\/harrowdale[^"#]*)/g)].map(([, way = '']) => way.replaceAll('&amp;', '&'));
    for (const way of ways) {
      // One of each kind is enough: all batches look alike.
      const kind = way.replaceAll(/[0-9a-f-]{36}/g, 'one').replace(/after=[^&]*/, 'after');
      if (seen.has(kind)) continue;
      seen.add(kind);
      waiting.push(way);
    }
  }
  expect(refused).toEqual([]);
  expect(seen.size).toBeGreaterThan(15);
  for (const screen of ['', '/batches?relation=site', '/readings/funnels']) {
    await open(page, screen);
    expect.soft(await unfitIn(page), screen).toEqual([]);
  }
});
