import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from '@playwright/test';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Rules {
  readonly type: 'tag' | 'rule';
  readonly values: string[];
}

const EVERY_RULE: Rules = { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'] };

/** What a narrow or a dark screen can change; names, roles and order are the same on all. */
export const RULES_OF_SIGHT: Rules = {
  type: 'rule', values: ['color-contrast', 'target-size', 'scrollable-region-focusable', 'link-in-text-block', 'meta-viewport'],
};

/** Fingers in wet gloves hit this, in CSS pixels; half a pixel is left to rounding. */
const TARGET_PX = 56;

/** What keeps somebody from using the screen as it stands: rules of axe that it breaks, and scrolling sideways. */
export async function unfitIn(page: Page, runOnly: Rules = EVERY_RULE): Promise<string[]> {
  // Reading axe takes a page longer than asking it, so it is brought once for all that is asked of a page.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  const broken = await page.evaluate(async (rules) => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run({ runOnly: rules, resultTypes: ['violations'] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
  }, runOnly);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  return overflow > 0 ? [...broken, `scrolls sideways by ${overflow} px`] : broken;
}

/** Targets in the main part that are too small for the bench. Radio buttons are as large as the plate around them. */
export async function smallTargetsIn(page: Page): Promise<string[]> {
  return page.locator('main').evaluate((main, least) => {
    const targets = [...main.querySelectorAll<HTMLElement>('a, button, select, summary, label:has(input), input:not(label input)')];
    return targets
      .map((target) => ({ target, box: target.getBoundingClientRect() }))
      .filter(({ target, box }) => box.width > 1 && getComputedStyle(target).visibility !== 'hidden' && Math.min(box.width, box.height) < least - 0.5)
      .map(({ target, box }) => `${target.innerText || target.outerHTML.slice(0, 80)}: ${Math.round(box.width)} x ${Math.round(box.height)}`);
  }, TARGET_PX);
}
