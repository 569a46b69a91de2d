import { expect, type Page, test } from '@playwright/test';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

const open = (page: Page, path: string) => page.goto(`${demoUrl()}${HARROWDALE}${path}`);
/** A line of the sheet, by its printed number. */
const line = (page: Page, number: number) => page.locator(`#line-${number}`);
const box = (page: Page, field: string, number: number) => page.getByLabel(`${field}, line ${number}`, { exact: true });

test('a root check is printed, typed back in its own order, and stands in the books once', async ({ page }) => {
  test.setTimeout(120_000);
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await open(page, '/work-lists');
  await page.getByRole('link', { name: 'Make a work list' }).first().click();
  await page.getByRole('radio', { name: 'Root check' }).check();
  await page.getByLabel('Where (may stay empty)').selectOption({ label: 'House C' });
  await page.getByLabel('Days since sticking, at least').fill('0');
  await page.getByRole('button', { name: 'Make the list' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Root check');
  const rows = page.getByRole('table').getByRole('row');
  expect(await rows.count()).toBeGreaterThan(3);
  const labels = await rows.locator('.tie-label').allTextContents();

  // On paper: both papers, each a document.
  for (const paper of ['A4', 'Letter']) {
    const pdf = await page.request.get(`${demoUrl()}${await page.getByRole('link', { name: `PDF, ${paper}` }).getAttribute('href')}`);
    expect([pdf.status(), pdf.headers()['content-type'], (await pdf.body()).subarray(0, 5).toString()]).toEqual([200, 'application/pdf', '%PDF-']);
  }

  // The code on the sheet leads here; the lines stand in the order of the paper.
  await page.getByRole('link', { name: 'Type it back' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Type back: Root check');
  expect(await page.locator('ol .tie-label').allTextContents()).toEqual(labels);
  await box(page, 'Alive', 1).fill('12');
  await box(page, 'Alive', 1).press('Enter');
  await expect(box(page, 'Alive', 2)).toBeFocused();
  await page.keyboard.type('500');
  await box(page, 'Rooted', 1).fill('3');

  // A reload loses nothing.
  await page.reload();
  await expect(page.getByText('Kept on this device')).toBeVisible();
  await expect(box(page, 'Alive', 2)).toHaveValue('500');

  // The slip stays beside its line; the other line is in the books.
  await page.getByRole('button', { name: 'Save the lines' }).click();
  await expect(page.getByText('1 line is in the books. 1 line was not taken')).toBeVisible();
  await expect(line(page, 1)).toContainText('typed back');
  await expect(line(page, 2)).toContainText('The books had');
  await box(page, 'Alive', 2).fill('15');
  await page.getByRole('button', { name: 'Save the lines' }).click();
  await expect(line(page, 2)).toContainText('typed back');

  // Nobody types it again, and what was kept on the device has gone.
  await page.reload();
  await expect(page.getByText('Kept on this device')).toBeHidden();
  await expect(box(page, 'Alive', 1)).toBeHidden();
  await line(page, 1).getByRole('link').click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(labels[0] ?? '');
  await expect(page.getByRole('term').filter({ hasText: 'Here now' }).locator('+ dd')).toHaveText(/12/);
  expect(complaints).toEqual([]);
});

test('cards for a sticking night are made from a trip', async ({ page }) => {
  await signIn(page, 'coordinator');
  await open(page, '/trips');
  const trips = await page.locator('main table a').evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
  const perCard = page.getByLabel('Cuttings a card, at most');
  // Of the trips that are there, one from which cuttings are still to be stuck: other journeys stick some.
  for (const trip of trips.filter((href) => /\/trips\/[0-9a-f-]{36}$/.test(href))) {
    await page.goto(`${demoUrl()}${trip}`);
    await page.getByRole('link', { name: 'Tray cards' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('cards');
    if ((await perCard.count()) > 0) break;
  }
  await perCard.fill('20');
  await page.getByRole('button', { name: 'Show the cards' }).click();
  const numbers = await page.getByRole('table').first().locator('tbody tr td:nth-child(3)').allTextContents();
  expect(numbers.length).toBeGreaterThan(0);
  expect(numbers.every((n) => Number(n) >= 1 && Number(n) <= 20)).toBe(true);
  const pdf = await page.request.get(`${demoUrl()}${await page.getByRole('link', { name: 'PDF, Letter' }).first().getAttribute('href')}`);
  expect([pdf.status(), pdf.headers()['content-type']]).toEqual([200, 'application/pdf']);
});
