import { expect, type Page, test } from '@playwright/test';
import { join } from 'node:path';
import { demoUrl, HARROWDALE, signIn } from './product/people.ts';

/** `PICTURES=keep npm run e2e` puts them where the README shows them; else they are made and thrown away. */
const FOLDER = process.env['PICTURES'] === 'keep' ? join(import.meta.dirname, 'pictures') : join(import.meta.dirname, '../../test-results/pictures');

const open = (page: Page, path: string) => page.goto(`${demoUrl()}${HARROWDALE}${path}`);
const take = (page: Page, name: string) => page.screenshot({ path: join(FOLDER, `${name}.png`) });

test('the desk has screens worth showing: home, a batch with its family line, what survives, what made a difference, a plan, a sheet', async ({ page }) => {
  await signIn(page, 'coordinator');
  await open(page, '');
  await take(page, 'home');
  await open(page, '/batches?stage=planted');
  await page.getByRole('row').nth(1).getByRole('link').first().click();
  await expect(page.getByRole('region', { name: 'Family line' })).toBeVisible();
  await take(page, 'batch');
  await open(page, '/readings/funnels');
  await page.getByRole('heading', { name: 'Corran Ridge' }).scrollIntoViewIfNeeded();
  await take(page, 'readings');
  await open(page, '/readings/compare');
  await page.getByRole('heading', { name: 'How many rooted' }).scrollIntoViewIfNeeded();
  await take(page, 'compare');
  await open(page, '/plans');
  await page.getByRole('link', { name: /^Sticking in autumn/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: /^Sticking in autumn/ })).toBeVisible();
  await take(page, 'plan');
  await open(page, '/import');
  await page.getByLabel('The sheet, as a CSV file').setInputFiles(join(import.meta.dirname, '../fixtures/not-ok/rooted-above-alive.csv'));
  await page.getByRole('button', { name: 'Read the sheet' }).click();
  await page.getByRole('button', { name: 'See what it would do' }).click();
  await expect(page.getByRole('heading', { name: 'What it would do' })).toBeVisible();
  await take(page, 'import');
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 360, height: 740 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2 });

  test('so has a round', async ({ page }) => {
    await signIn(page, 'volunteer');
    await open(page, '');
    await page.getByRole('link', { name: 'Frame 3' }).first().click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.getByRole('button', { name: 'Skip' }).click();
    // A picture of a colour on its way would be of nothing.
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.getByRole('button', { name: '7', exact: true }).click();
    await take(page, 'round');
  });
});
