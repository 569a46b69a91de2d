import { expect, type Page } from '@playwright/test';
import { demoUrl, HARROWDALE } from '../product/people.ts';
import { ABOUT_ONE } from './screens.ts';

/** What stands in an address for one thing. */
const THING: Readonly<Record<string, string>> = { act: '[a-z-]+', job: '[a-z-]+', year: '\\d{4}' };

/** Which addresses a route of the web app answers. */
const addressesOf = (route: string): RegExp =>
  new RegExp(`^${HARROWDALE}${route.replaceAll(/\[(\w+)\]/g, (_, name: string) => THING[name] ?? '[0-9a-f-]{36}')}$`);

const withoutQuery = (address: string): string => address.replace(/[?#].*$/, '');

/** Screens about one thing in the demo: the first link that leads to each, and what lies behind it. */
export async function screensAboutOne(page: Page): Promise<string[]> {
  const known = new Map<string, string>();
  const found: string[] = [];
  for (const [from, route, behind = []] of ABOUT_ONE) {
    const link = await linkTo(page, known.get(from) ?? from, route);
    known.set(route, link);
    found.push(link, ...behind.map((more) => `${withoutQuery(link)}${more}`));
  }
  return found;
}

async function linkTo(page: Page, from: string, route: string): Promise<string> {
  await page.goto(`${demoUrl()}${HARROWDALE}${from}`);
  const links = await page.locator('main a').evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
  const link = links.find((href) => addressesOf(route).test(withoutQuery(href)));
  expect(link, `a link to ${route} from ${from || 'home'}`).toBeDefined();
  return (link ?? '').replace(HARROWDALE, '');
}
