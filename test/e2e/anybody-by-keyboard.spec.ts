import { expect, type Locator, type Page, test } from '@playwright/test';
import { complaintsOf, demoUrl, HARROWDALE, passwordOf, signIn } from './product/people.ts';

/** A person gives up long before. */
const MOST_STOPS = 120;

/** Goes on with the tab key until there, and sees that the focus can be seen and is not covered. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible();
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return expectInSight(target);
    await page.keyboard.press('Tab');
  }
  throw new Error(`${String(target)} is out of reach of the tab key`);
}

async function expectInSight(target: Locator): Promise<void> {
  const isInSight = await target.evaluate((element) => {
    const box = element.getBoundingClientRect();
    const top = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
    return top !== null && (element.contains(top) || top.contains(element));
  });
  expect(isInSight, `${String(target)} is focused behind something else`).toBe(true);
}

async function go(page: Page, target: Locator): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press('Enter');
}

test('signs in, logs one count and saves it, with the keyboard alone', async ({ page }) => {
  const complaints = complaintsOf(page);
  await page.goto(`${demoUrl()}/sign-in`);
  await tabTo(page, page.getByLabel('E-mail'));
  await page.keyboard.type('volunteer@harrowdale.example');
  await tabTo(page, page.getByLabel('Password', { exact: true }));
  await page.keyboard.type(passwordOf('volunteer'));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Good to have you here');

  await go(page, page.getByRole('link', { name: 'Frame 3' }).first());
  await go(page, page.getByRole('button', { name: 'Begin' }));
  await go(page, page.getByRole('button', { name: 'Skip' }));
  await expect(page.getByRole('button', { name: 'Finish early' })).toBeVisible();
  await page.keyboard.type('3');
  await go(page, page.getByRole('button', { name: 'Next' }));
  await expect(page.getByText('is kept on this phone')).toBeVisible();
  await go(page, page.getByRole('button', { name: 'Finish early' }));
  // It goes out by itself.
  await expect(page.getByText('in the books')).toBeVisible({ timeout: 45_000 });
  expect(complaints).toEqual([]);
});

test('the first stop of every page leads past the navigation', async ({ page }) => {
  await signIn(page, 'volunteer');
  await page.goto(`${demoUrl()}${HARROWDALE}/batches`);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('#main')).toBeFocused();
});
