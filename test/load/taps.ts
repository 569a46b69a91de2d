import type { CDPSession, Locator, Page } from '@playwright/test';

/** So many times slower than this machine. */
const SLOWER = 4;

/** A page with one button that shows that it was tapped: less can't be done. */
export const EMPTY_PAGE = `<meta name="viewport" content="width=device-width"><button style="width:100px;height:60px" onclick="this.textContent = Number(this.textContent) + 1">0</button>`;

const throttles = new WeakMap<Page, CDPSession>();

export async function slowed(page: Page): Promise<Page> {
  const throttle = await page.context().newCDPSession(page);
  throttles.set(page, throttle);
  await throttle.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  return page;
}

/** A slowed page keeps a core busy even while it rests: whatever is measured beside it would be slower still. */
export async function atFullSpeed(page: Page): Promise<void> {
  await throttles.get(page)?.send('Emulation.setCPUThrottlingRate', { rate: 1 });
}

/** Milliseconds until something is there to be seen. */
export async function msUntil(begin: () => Promise<unknown>, sign: Locator): Promise<number> {
  const began = performance.now();
  await begin();
  await sign.waitFor();
  return performance.now() - began;
}

/** Something on a page: which elements, and how its words begin. */
export interface Sign {
  readonly selector: string;
  readonly words?: string;
}

/**
 * Milliseconds from the beginning of a navigation, by the page's own clock, until something was painted.
 * The page tells it: asking it from outside again and again costs a slow phone half a second.
 */
export async function paintedAfter(page: Page, address: string, sign: Sign): Promise<number> {
  await page.addInitScript(({ selector, words = '' }: Sign) => {
    const isThere = (): boolean => [...document.querySelectorAll(selector)].some(({ textContent }) => textContent.trim().startsWith(words));
    const watch = new MutationObserver(() => {
      if (!isThere()) return;
      watch.disconnect();
      requestAnimationFrame(() => setTimeout(() => performance.mark('painted'), 0));
    });
    watch.observe(document, { childList: true, subtree: true });
  }, sign);
  await page.goto(address, { waitUntil: 'commit' });
  const mark = await page.waitForFunction(() => performance.getEntriesByName('painted')[0]?.startTime, undefined, { polling: 500, timeout: 60_000 });
  return Number(await mark.jsonValue());
}

/** Milliseconds from a finger’s touch, by the browser’s own stamp, until what it changed was painted. */
export async function tapToPaint(page: Page, target: Locator): Promise<number> {
  const painted = page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        // At the window, before anybody else hears of it.
        window.addEventListener('click', ({ timeStamp }) => requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - timeStamp), 0)), { capture: true, once: true });
      }),
  );
  // By its place alone: a tap that looks whether it hits would be looked for within the slow page.
  const box = await target.boundingBox();
  if (!box) throw new Error('What was to be tapped is not on the screen.');
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  return painted;
}

export const p95 = (all: readonly number[]): number => all.toSorted((one, other) => one - other)[Math.ceil(all.length * 0.95) - 1] ?? Number.NaN;
