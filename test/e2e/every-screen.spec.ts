import { expect, type Page, test } from '@playwright/test';
import { RULES_OF_SIGHT, unfitIn } from './product/fitness.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

const SCREENS = [
  '', '/due', '/news', '/places', '/places/new', '/batches', '/review', '/donor-trees', '/donor-trees/new', '/stands', '/stands/new', '/trips', '/trips/new', '/permissions',
  '/permissions/new', '/taxa', '/taxa/new', '/recipes', '/recipes/new', '/sites', '/sites/new', '/readings', '/readings/funnels', '/readings/compare', '/readings/compare?season=2025', '/readings/sites', '/readings/donors-at-risk', '/readings/leave-or-call', '/trace', '/reports', '/reports/landowner', '/reports/funder', '/reports/handover', '/people', '/people/invite', '/people/phones',
  '/partners', '/partners/new', '/keys', '/keys/new', '/import', '/settings', '/stick', '/stick/opening', '/more', '/work-lists', '/work-lists/new', '/labels', '/labels/printer',
  '/requests', '/requests/new', '/plans', '/plans/new', '/workdays', '/workdays/new',
  '/treatments', '/scan', '/scan/many', '/without-label', '/places/walk', '/bench', '/bench/potting?stage=cutting', '/bench/moving', '/bench/mixing', '/bench/planting', '/holds',
];

/** What works without a signal; one page, whose screens stand behind the #. */
const IN_FIELD = ['/field', '/field#/harrowdale/pack', '/field#/harrowdale/trip', '/field#/outbox'];

/** Screens about one thing, reached by the first link of a list; and what lies behind them. */
const ABOUT_ONE = [
  ['/batches', /\/batches\/[0-9a-f-]{36}$/, ['/relabel']], ['/donor-trees', /\/donor-trees\/[0-9a-f-]{36}$/], ['/stands', /\/stands\/[0-9a-f-]{36}$/], ['/trips', /\/trips\/[0-9a-f-]{36}$/],
  ['/requests', /\/requests\/[0-9a-f-]{36}$/], ['/plans', /\/plans\/[0-9a-f-]{36}$/, ['/edit', '/targets/new']], ['/workdays', /\/workdays\/[0-9a-f-]{36}$/], ['/recipes', /\/recipes\/[0-9a-f-]{36}$/], ['/sites', /\/sites\/[0-9a-f-]{36}$/], ['/readings', /\/readings\/stands\//], ['/readings', /\/readings\/species\//], ['/readings', /\/readings\/seasons\//], ['/readings/sites', /\/readings\/sites\/./],
  ['/places', /\/places\/[0-9a-f-]{36}$/, ['/climate', '/incidents/new']], ['/work-lists', /\/work-lists\/[0-9a-f-]{36}$/, ['/type']],
  ['/labels', /\/labels\/rolls\/[0-9a-f-]{36}$/],
] as const;

const WIDE = { width: 1280, height: 900 };
const NARROW = { width: 320, height: 740 };

/** What is wrong with a screen, wide and light, then on a small phone in the dark. */
async function judge(page: Page, screen: string): Promise<void> {
  // Colours that are still on their way from one to the other are nobody's.
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.setViewportSize(WIDE);
  const answer = await page.goto(`${demoUrl()}${IN_FIELD.includes(screen) ? '' : HARROWDALE}${screen}`);
  // Behind the # nothing is asked of the server.
  if (answer) expect.soft(answer.status(), screen).toBe(200);
  if (IN_FIELD.includes(screen)) await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect.soft(await unfitIn(page), `${screen}, wide`).toEqual([]);
  await page.setViewportSize(NARROW);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect.soft(await unfitIn(page, RULES_OF_SIGHT), `${screen}, narrow and dark`).toEqual([]);
}

/** The first link of each list that leads to one thing of it. */
async function aboutOne(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const [list, pattern, behind = []] of ABOUT_ONE) {
    await page.goto(`${demoUrl()}${HARROWDALE}${list}`);
    const links = await page.locator('main a').evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
    const link = links.find((href) => pattern.test(href.replace(/[?#].*$/, '')));
    expect(link, `a link from ${list || 'home'}`).toBeDefined();
    const screen = (link ?? '').replace(HARROWDALE, '');
    found.push(screen, ...behind.map((more) => `${screen}${more}`));
  }
  return found;
}

// Nothing is written here: each lane takes a part.
test.describe.configure({ mode: 'parallel' });

/** More of the lists to begin with, since the other part has to find its way to each thing. */
const HALF = Math.ceil(SCREENS.length * 0.65);

for (const { name, screensFrom } of [
  { name: 'to begin with', screensFrom: () => SCREENS.slice(0, HALF) },
  { name: 'those about one thing among them', screensFrom: async (page: Page) => [...SCREENS.slice(HALF), ...IN_FIELD, ...(await aboutOne(page))] },
]) {
  test(`every screen is fit for everybody, ${name}`, async ({ page }) => {
    test.setTimeout(900_000);
    await signIn(page, 'coordinator');
    const complaints = complaintsOf(page);
    for (const screen of await screensFrom(page)) await judge(page, screen);
    expect(complaints).toEqual([]);
  });
}
