import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, expect, type Page } from '@playwright/test';
import config from '../../playwright.config.ts';
import { demoUrl } from './people.ts';

/** A phone of its own: what lies on it outlives its browser. */
export interface Phone {
  readonly folder: string;
  context: BrowserContext;
  page: Page;
}

export async function phone(folder = mkdtempSync(join(tmpdir(), 'sprigline-phone-'))): Promise<Phone> {
  const context = await chromium.launchPersistentContext(folder, { ...config.use?.launchOptions, viewport: { width: 360, height: 740 }, hasTouch: true });
  // Whatever is not there by then will not come: with no signal nothing loads.
  context.setDefaultTimeout(20_000);
  return { folder, context, page: context.pages()[0] ?? (await context.newPage()) };
}

/** As when the battery dies: no page is asked, and nothing is written that was not. */
export async function dies({ folder, context }: Phone): Promise<Phone> {
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    if (commandOf(pid).includes(`user-data-dir=${folder}`)) process.kill(Number(pid), 'SIGKILL');
  }
  await context.close().catch(() => undefined);
  return phone(folder);
}

/** Nothing for a process that has just ended. */
function commandOf(pid: string): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}

/** Takes a place along, and has from then on no signal. Somebody is signed in. */
export async function packs({ page, context }: Phone, place: string): Promise<void> {
  await page.goto(`${demoUrl()}/field#/harrowdale/pack`);
  await page.getByRole('button', { name: `Pack ${place}` }).click();
  await expect(page.getByText('packed just now').first()).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await context.setOffline(true);
}

export async function thrownAway({ folder, context }: Phone): Promise<void> {
  await context.close().catch(() => undefined);
  rmSync(folder, { recursive: true, force: true });
}

/** All that lies in a store of a phone. The page must be one of ours. */
export const storedOn = <T>({ page }: Phone, store: 'outbox' | 'sent'): Promise<T[]> =>
  page.evaluate(
    (name) =>
      new Promise<T[]>((resolve, reject) => {
        const opening = indexedDB.open('sprigline');
        opening.onerror = () => reject(new Error('no store'));
        opening.onsuccess = () => {
          const all = opening.result.transaction(name).objectStore(name).getAll() as IDBRequest<T[]>;
          all.onsuccess = () => (opening.result.close(), resolve(all.result));
        };
      }),
    store,
  );
