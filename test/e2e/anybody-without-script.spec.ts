import { expect, test } from '@playwright/test';
import { demoUrl, HARROWDALE, signIn } from './product/people.ts';

test.describe('with scripts switched off', () => {
  test.use({ javaScriptEnabled: false });

  test('signs in, reads a stand and counts one batch', async ({ page }) => {
    await signIn(page, 'volunteer');
    await page.goto(`${demoUrl()}${HARROWDALE}/readings`);
    await expect(page.getByRole('heading', { name: 'Skell Gill', exact: true })).toBeVisible();

    await page.goto(`${demoUrl()}${HARROWDALE}/batches?stage=liner`);
    await page.getByRole('row').nth(1).getByRole('link').first().click();
    const there = Number(/Here now\s+(\d+)/.exec(await page.locator('main').innerText())?.[1] ?? '0');
    await page.getByRole('link', { name: 'Count', exact: true }).click();
    await page.getByLabel('How many are alive').fill(String(there));
    await page.getByRole('button', { name: 'Write the count' }).click();
    await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
  });
});
