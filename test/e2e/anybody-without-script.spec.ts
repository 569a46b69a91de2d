import { expect, test } from '@playwright/test';
import { demoUrl, HARROWDALE, signIn } from './product/people.ts';

test.describe('with scripts switched off', () => {
  test.use({ javaScriptEnabled: false });

  test.fixme('signs in, reads a stand and counts one batch', async ({ page }) => {
    await signIn(page, 'volunteer');
    await page.goto(`${demoUrl()}${HARROWDALE}/readings`);
    await expect(page.getByRole('heading', { name: 'Skell Gill' })).toBeVisible();

    await page.goto(`${demoUrl()}${HARROWDALE}/batches?stage=liner`);
    await page.getByRole('row').nth(1).getByRole('link').first().click();
    const there = Number(/Here now\s+(\d+)/.exec(await page.locator('main').innerText())?.[1] ?? '0');
    await page.getByRole('link', { name: 'Count', exact: true }).click();
    await page.getByLabel('How many are alive').fill(String(there));
    await page.getByRole('button', { name: 'Write the count' }).click();
    await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
  });
});

test.describe('by keyboard alone', () => {
  test('signs in and finds a donor tree', async ({ page }) => {
    await page.goto(`${demoUrl()}/sign-in`);
    await page.getByLabel('E-mail').focus();
    await page.keyboard.type('volunteer@harrowdale.example');
    await page.keyboard.press('Tab');
    await page.keyboard.type(process.env['E2E_VOLUNTEER'] ?? '');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Good to have you here');

    await page.getByRole('navigation').first().getByRole('link', { name: 'Donor trees' }).focus();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { level: 1, name: 'Donor trees' })).toBeVisible();
    await page.getByRole('link', { name: 'CR-01' }).focus();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { level: 1 })).toContainText('CR-01');
  });
});
