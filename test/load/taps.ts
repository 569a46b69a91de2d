import type { Locator, Page } from '@playwright/test';

/** So many times slower than this machine. */
const SLOWER = 4;

/** A page with one button that shows that it was tapped: less can't be done. */
export const EMPTY_PAGE = `<meta name="viewport" content="width=device-width"><button style="width:100px;height:60px" onclick="this.textContent = Number(this.textContent) + 1">0</button>`;

export async function slowed(page: Page): Promise<Page> {
  await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  return page;
}

/** Milliseconds until something is there to be seen. */
export async function msUntil(begin: () => Promise<unknown>, sign: Locator): Promise<number> {
  const began = performance.now();
  await begin();
  await sign.waitFor();
  return performance.now() - began;
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
  await target.tap();
  return painted;
}

export const p95 = (all: readonly number[]): number => all.toSorted((one, other) => one - other)[Math.ceil(all.length * 0.95) - 1] ?? Number.NaN;
