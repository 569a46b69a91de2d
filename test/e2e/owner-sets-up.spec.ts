import { expect, type Page, test } from '@playwright/test';
import { answerForm, type Answers } from './product/forms.ts';
import { complaintsOf } from './product/people.ts';

// One empty install, set up once: what one test makes, the next one works with.
test.describe.configure({ mode: 'serial' });

const link = (): string => process.env['E2E_SETUP_LINK'] ?? '';
const open = (page: Page, path: string) => page.goto(new URL(path, link()).href);

const ROWAN = { email: 'rowan@example.org', password: 'moss under the old wall' };
const HAZEL = { email: 'hazel@example.org', password: 'a frame full of liners' };

async function enter(page: Page, { email, password }: typeof ROWAN): Promise<void> {
  await open(page, '/sign-in');
  await answerForm(page, { 'E-mail address': email, Password: password }, 'Sign in', 'Good to have you here');
}

const setUp = (email: string): Answers => ({
  'Your name': 'Rowan H.', 'E-mail address': email, Password: ROWAN.password,
  'Name of the programme': 'Corran trees', 'Short name for addresses': 'corran', 'Time zone': 'Europe/London',
});

/** The link that a page shows this once. */
async function linkShown(page: Page, to: string): Promise<string> {
  const shown = page.locator('main code');
  await expect(shown).toContainText(`/${to}/`);
  return (await shown.innerText()).trim();
}

test('an owner sets up an empty install by a link that works once, goes out and comes in again', async ({ page }) => {
  const complaints = complaintsOf(page);
  await page.goto(link());
  await answerForm(page, setUp(ROWAN.email), 'Set it up', 'Good to have you here, Rowan');
  await page.getByRole('button', { name: 'Sign out' }).click();
  await expect(page.getByText('You are signed out.')).toBeVisible();
  await open(page, '/programmes/corran');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sign in');
  await enter(page, ROWAN);
  expect(complaints).toEqual([]);

  await page.goto(link());
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This link doesn’t open any more');
  await expect(page.getByRole('button', { name: 'Set it up' })).toHaveCount(0);
});

test('a coordinator comes in by an invitation link, forgets the password, and is shut out the moment they are removed', async ({ page, browser }) => {
  test.setTimeout(90_000);
  await enter(page, ROWAN);
  await open(page, '/programmes/corran/people/invite');
  await page.getByLabel('For whom').fill('Hazel B.');
  await page.getByLabel('Coordinator: everything with plants and people').check();
  await page.getByRole('button', { name: 'Make the link' }).click();
  const invitation = await linkShown(page, 'invitation');

  const other = await (await browser.newContext()).newPage();
  await other.goto(invitation);
  await answerForm(other, { 'Your name': 'Hazel B.', 'E-mail address': HAZEL.email, Password: HAZEL.password }, 'Make an account and go in', 'Good to have you here, Hazel');

  await open(page, '/programmes/corran/people');
  await page.getByRole('link', { name: 'Hazel B.' }).click();
  await page.getByRole('button', { name: 'Make a reset link' }).click();
  const reset = await linkShown(page, 'reset');
  await other.goto(reset);
  await other.getByLabel('Password', { exact: true }).fill('heel cuttings in november');
  await other.getByRole('button', { name: 'Set the new password' }).click();
  await expect(other.getByText('Your new password holds.')).toBeVisible();
  await enter(other, { ...HAZEL, password: 'heel cuttings in november' });

  await page.getByRole('button', { name: 'Remove Hazel B.' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('People');
  await expect(page.getByText('Hazel B.')).toHaveCount(0);
  expect((await open(other, '/programmes/corran'))?.status()).toBe(404);
});
