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

  test('a tray that came back with one refused line is sent again: what was written is not written twice', async ({ page }) => {
    await signIn(page, 'coordinator');
    await page.goto(`${demoUrl()}${HARROWDALE}/stick`);
    await page.getByRole('link', { name: /cuttings/ }).first().click();
    const left = page.getByText(/^\d+ of \d+ left/);
    const before = await left.allInnerTexts();
    await page.getByLabel('Into which tray').selectOption({ index: 1 });
    for (const at of [0, 1]) await page.locator(`[name="lines/${at}/n"]`).fill('1');
    await page.locator('[name="lines/1/label"]').fill('T157');
    await page.getByRole('button', { name: 'They are stuck' }).click();
    await expect(page.locator('[name="lines/1/label"]')).toHaveAttribute('aria-invalid', 'true');
    await page.locator('[name="lines/1/label"]').fill('NOSCRIPT2');
    await page.getByRole('button', { name: 'They are stuck' }).click();
    await expect(page.getByText('✓')).toBeVisible();
    const oneLess = (words: string | undefined) => words?.replace(/^\d+/, (n) => String(Number(n) - 1));
    expect((await left.allInnerTexts()).slice(0, 2)).toEqual(before.slice(0, 2).map(oneLess));
  });
});
