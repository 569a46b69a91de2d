import { expect, type Page, test } from '@playwright/test';
import { join } from 'node:path';
import { answerForm } from './product/forms.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

const FIXTURES = join(import.meta.dirname, '../fixtures');

async function bring(page: Page, file: string, programme = HARROWDALE): Promise<void> {
  await page.goto(`${demoUrl()}${programme}/import`);
  await page.getByLabel('The sheet, as a CSV file').setInputFiles(join(FIXTURES, file));
  await page.getByRole('button', { name: 'Read the sheet' }).click();
}

test('a sheet of two seasons comes whole into a programme of its own: guesses confirmed, looked over, then written', async ({ page }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'owner');
  await page.goto(`${demoUrl()}/programmes/new`);
  await answerForm(page, { 'Name of the programme': 'Corran trees', 'Short name for addresses': 'corran-trees', 'Time zone': 'Europe/London' }, 'Open another programme', 'Good to have you here');

  await bring(page, 'ok/log-sheet-two-seasons.csv', '/programmes/corran-trees');
  await page.getByRole('button', { name: 'See what it would do' }).click();
  await expect(page.getByText('No faults. Nothing has been written yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Write 1,268 entries' }).click();
  await expect(page.getByRole('heading', { name: 'In the books' })).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('1,268 entries were written.')).toBeVisible();
  await page.goto(`${demoUrl()}/programmes/corran-trees/readings`);
  await expect(page.getByRole('heading', { name: 'Corran Ridge' })).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a sheet that is in the books already changes nothing', async ({ page }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await bring(page, 'ok/log-sheet-two-seasons.csv');
  await expect(page.getByText('1,268 rows under the headings.')).toBeVisible();
  await page.getByRole('button', { name: 'See what it would do' }).click();
  await expect(page.getByText('Every row of this sheet is in the books already.')).toBeVisible();
  await page.getByRole('button', { name: 'Write it' }).click();
  await expect(page.getByRole('heading', { name: 'In the books' })).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('Nothing was new.')).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a faulty sheet lists its faults by row and column, and cannot be written', async ({ page }) => {
  await signIn(page, 'coordinator');
  await bring(page, 'not-ok/rooted-above-alive.csv');
  await page.getByRole('button', { name: 'See what it would do' }).click();
  const fault = page.getByRole('row').filter({ hasText: 'More rooted than alive.' });
  await expect(fault).toContainText('3');
  await expect(fault).toContainText('rooted');
  await expect(page.getByRole('button', { name: /^Write/ })).toHaveCount(0);
});

test('a workbook is refused in words that say what to do', async ({ page }) => {
  await signIn(page, 'coordinator');
  await bring(page, 'not-ok/not-text.xlsx');
  await expect(page.getByRole('alert').filter({ hasText: 'There is a problem' })).toContainText('save the sheet as CSV');
});

test('a volunteer may not bring sheets', async ({ page }) => {
  await signIn(page, 'volunteer');
  expect((await page.goto(`${demoUrl()}${HARROWDALE}/import`))?.status()).toBe(403);
});
