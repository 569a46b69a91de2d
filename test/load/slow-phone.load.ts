import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoOf, ended, freePort, launch, type Product } from '../e2e/product/launch.ts';
import type { Demo } from '../e2e/product/people.ts';
import { type Phone, phone, thrownAway } from '../e2e/product/phone.ts';
import { atDesk, BENCH, makeBench } from '../long/field/bench-of-forty.ts';
import { NarrowRoad, SLOW } from './narrow-road.ts';
import { middleOf, type Measured, printRatios } from './ratios.ts';
import { atFullSpeed, EMPTY_PAGE, msUntil, p95, paintedAfter, type Sign, slowed, tapToPaint } from './taps.ts';

// A slow phone: a quarter of this machine's speed, 1.6 Mbit/s, 150 ms. The bars: the packed round opens without a signal
// within two seconds, and shows a tap within a tenth of one, 95 times of 100. Beside each stands the barest page of the
// same build, or a tap on an empty page, on the same phone. Printed, nothing asserted.
const [STARTS, TAPS, STOPS] = [7, 60, 20];
const [BAREST, BEGIN]: [Sign, Sign] = [{ selector: 'input[type=email]' }, { selector: 'button', words: 'Begin' }];
const folder = mkdtempSync(join(tmpdir(), 'sprigline-slow-'));
let [demo, product, road, mine, bare] = [] as unknown as [Demo, Product, NarrowRoad, Phone, Phone];

beforeAll(async () => {
  chmodSync(folder, 0o755);
  const [door, port] = [await freePort(), await freePort()];
  road = new NarrowRoad(port);
  await road.open(door);
  product = await launch({ settings: { DATA_DIR: join(folder, 'data'), PORT: String(port), BASE_URL: `http://localhost:${door}` }, until: 'owner@' });
  demo = demoOf(product.said);
  await makeBench(await atDesk(demo, 'coordinator'));
  [mine, bare] = [await phone(), await phone()];
}, 300_000);

afterAll(async () => {
  await Promise.all([mine, bare].filter(Boolean).map(thrownAway));
  road.close();
  await ended(product);
  rmSync(folder, { recursive: true, force: true });
});

test('a slow phone packs, opens without a signal, and keeps up with fingers', async () => {
  const rows = [...(await firstVisit()), ...(await startsWithoutSignal()), ...(await fingers())];
  printRatios('A slow phone', rows);
  expect(rows.every(({ ms }) => ms > 0)).toBe(true);
}, 600_000);

/** Over the slow network, with nothing kept yet. */
async function firstVisit(): Promise<Measured[]> {
  const page = mine.page;
  await page.goto(`${demo.url}/sign-in`);
  await page.getByLabel('E-mail').fill('volunteer@harrowdale.example');
  await page.getByLabel('Password', { exact: true }).fill(demo.passwords['volunteer'] ?? '');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL(/programmes/);
  // Nothing of the pages before lies in the way.
  await (await mine.context.newCDPSession(page)).send('Network.clearBrowserCache');

  road.width = SLOW;
  const base = await paintedAfter(await slowed(bare.page), `${demo.url}/sign-in`, BAREST);
  await atFullSpeed(bare.page);
  await slowed(page);
  const before = road.bytes;
  const opened = await paintedAfter(page, `${demo.url}/field#/harrowdale/pack`, { selector: 'button', words: `Pack ${BENCH}` });
  const weight = road.bytes - before;
  const packed = await msUntil(() => page.getByRole('button', { name: `Pack ${BENCH}` }).click(), page.getByText('packed just now').first());
  const began = performance.now();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const ready = packed + performance.now() - began;
  road.width = undefined;
  await atFullSpeed(page);
  console.log(`First visit: ${Math.round(weight / 1_000)} kB until it shows, ${Math.round((road.bytes - before) / 1_000)} kB until it works without a signal`);
  return [
    { what: 'first visit, until places can be packed', ms: opened, base },
    { what: 'packing forty batches', ms: packed, base },
    { what: 'until all works without a signal', ms: opened + ready, base },
  ];
}

async function startsWithoutSignal(): Promise<Measured[]> {
  await mine.context.setOffline(true);
  const placeId = await walkId(mine.page);
  const [starts, bases]: [number[], number[]] = [[], []];
  for (let each = 0; each < STARTS; each += 1) {
    bases.push(await inNewPage(bare.context, '/sign-in', BAREST));
    starts.push(await inNewPage(mine.context, `/field#/harrowdale/round/${placeId}`, BEGIN));
  }
  const worst = Math.max(...starts);
  return [
    { what: 'packed round, without a signal (bar 2000 ms)', ms: middleOf(starts), base: middleOf(bases) },
    { what: 'the same, the slowest', ms: worst, base: Math.max(...bases) },
  ];
}

async function fingers(): Promise<Measured[]> {
  const { page } = mine;
  await page.goto(`${demo.url}/field#/harrowdale/round/${await walkId(page)}`);
  await page.getByRole('button', { name: /^(Begin|Go on)/ }).click();
  const [skip, finish] = [page.getByRole('button', { name: 'Skip' }), page.getByRole('button', { name: 'Finish early' })];
  await skip.waitFor();
  if (!(await finish.isVisible())) await skip.click();
  const empty = await slowed(await bare.context.newPage());
  await empty.setContent(EMPTY_PAGE);

  const base = p95(await times(TAPS, () => tapToPaint(empty, empty.getByRole('button'))));
  await empty.close();
  await slowed(page);
  const taps = await times(TAPS, async (nth) => {
    if (nth % 4 === 0) await page.getByRole('button', { name: 'Clear' }).tap();
    return tapToPaint(page, page.getByRole('button', { name: String(1 + (nth % 9)), exact: true }));
  });
  const nexts = await times(STOPS, async () => {
    await page.getByRole('button', { name: 'Clear' }).tap();
    await page.getByRole('button', { name: '7', exact: true }).tap();
    return tapToPaint(page, page.getByRole('button', { name: 'Next' }));
  });
  return [
    { what: 'tap to paint on a stop, 95 of 100 (bar 100 ms)', ms: p95(taps), base },
    { what: 'Next to the next batch painted, 95 of 100', ms: p95(nexts), base },
  ];
}

async function inNewPage(context: BrowserContext, path: string, sign: Sign): Promise<number> {
  const page = await slowed(await context.newPage());
  const ms = await paintedAfter(page, `${demo.url}${path}`, sign);
  await page.close();
  return ms;
}

async function times(n: number, measure: (nth: number) => Promise<number>): Promise<number[]> {
  const all: number[] = [];
  for (let nth = 0; nth < n; nth += 1) all.push(await measure(nth));
  return all;
}

const walkId = (page: Page): Promise<string> =>
  page.evaluate(() => new Promise<string>((resolve) => {
    const opening = indexedDB.open('sprigline');
    opening.onsuccess = () => {
      const walks = opening.result.transaction('walks').objectStore('walks').getAll() as IDBRequest<{ id: string }[]>;
      walks.onsuccess = () => (opening.result.close(), resolve(walks.result[0]?.id ?? ''));
    };
  }));
