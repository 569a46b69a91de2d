import { expect, test } from '@playwright/test';

test('an owner sets up an empty install by the one-time link, and lets a coordinator in and out again', async ({ page, browser }) => {
  const link = process.env['E2E_SETUP_LINK'] ?? '';
  await page.goto(link);
  await page.getByLabel('Your name').fill('Rowan H.');
  await page.getByLabel('E-mail').fill('rowan@example.org');
  await page.getByLabel('Password', { exact: true }).fill('moss under the old wall');
  await page.getByLabel('Name of the programme').fill('Corran trees');
  await page.getByLabel('Short name for addresses').fill('corran');
  await page.getByLabel('Time zone').selectOption('Europe/London');
  await page.getByRole('button', { name: 'Set it up' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Rowan');

  await page.goto(new URL('/programmes/corran/people/invite', link).href);
  await page.getByLabel('For whom').fill('Hazel B.');
  await page.getByLabel('Coordinator: everything with plants and people').check();
  await page.getByRole('button', { name: 'Make the link' }).click();
  const invitation = await page.locator('main code').innerText();
  expect(invitation).toContain('/invitation/');

  const other = await (await browser.newContext()).newPage();
  await other.goto(invitation.trim());
  await other.getByLabel('Your name').fill('Hazel B.');
  await other.getByLabel('E-mail').fill('hazel@example.org');
  await other.getByLabel('Password', { exact: true }).fill('a frame full of liners');
  await other.getByRole('button', { name: 'Make an account and go in' }).click();
  await expect(other.getByRole('heading', { level: 1 })).toContainText('Hazel');

  await page.goto(new URL('/programmes/corran/people', link).href);
  await page.getByRole('link', { name: 'Hazel B.' }).click();
  await page.getByRole('button', { name: 'Remove Hazel B.' }).click();
  await expect(page.getByText('Hazel B.')).toHaveCount(0);
  const answer = await other.goto(new URL('/programmes/corran', link).href);
  expect(answer?.status()).toBe(404);
});
