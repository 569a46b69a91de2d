import { expect, type Page } from '@playwright/test';

export const HARROWDALE = '/programmes/harrowdale';

export const PEOPLE = ['coordinator', 'volunteer', 'partner', 'owner'] as const;

type Person = (typeof PEOPLE)[number];

/** A product with the demo, which no journey of another lane touches. */
export interface Demo {
  readonly url: string;
  readonly passwords: Readonly<Record<string, string>>;
}

function demo(): Demo {
  const demos = JSON.parse(process.env['E2E_DEMOS'] ?? '[]') as Demo[];
  return demos[Number(process.env['TEST_PARALLEL_INDEX'] ?? 0)] ?? { url: '', passwords: {} };
}

export const demoUrl = (): string => demo().url;

export const passwordOf = (who: Person): string => demo().passwords[who] ?? '';

/** Signs in at the door of the demo. */
export async function signIn(page: Page, who: Person): Promise<void> {
  await page.goto(`${demoUrl()}/sign-in`);
  await page.getByLabel('E-mail').fill(`${who}@harrowdale.example`);
  await page.getByLabel('Password', { exact: true }).fill(passwordOf(who));
  await page.getByRole('button', { name: 'Sign in' }).click();
  // Whoever works in several programmes chooses first.
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/Good to have you here|Choose a programme/);
}

/** Whatever the browser complains of while a journey goes on: nothing is expected. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    // A page that answers 4xx on purpose is no complaint of the page.
    if (message.type() === 'error' && !/status of 4\d\d|ERR_INTERNET_DISCONNECTED/.test(message.text())) complaints.push(message.text());
  });
  return complaints;
}
