import { expect, type Page, test } from '@playwright/test';
import { RULES_OF_SIGHT, unfitIn } from './product/fitness.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';
import { screensAboutOne } from './screens/find-screens.ts';
import { IN_FIELD, OF_PERSON, OF_PROGRAMME } from './screens/screens.ts';

const WIDE = { width: 1280, height: 900 };
const NARROW = { width: 320, height: 740 };

const inProgramme = (screens: readonly string[]): string[] => screens.map((screen) => `${HARROWDALE}${screen}`);

/** The keys that stay at the foot of a field screen cover what lies below them, until one comes to the end. */
async function comeToItsEnd(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
}

/** What is wrong with a screen, wide and light, then on a small phone in the dark. */
async function judge(page: Page, screen: string): Promise<void> {
  // Colours that are still on their way from one to the other are nobody's.
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.setViewportSize(WIDE);
  const answer = await page.goto(`${demoUrl()}${screen}`);
  // Behind the # nothing is asked of the server.
  if (answer) expect.soft(answer.status(), screen).toBe(200);
  if (IN_FIELD.includes(screen)) await comeToItsEnd(page);
  expect.soft(await unfitIn(page), `${screen}, wide`).toEqual([]);
  await page.setViewportSize(NARROW);
  await page.emulateMedia({ colorScheme: 'dark' });
  if (IN_FIELD.includes(screen)) await comeToItsEnd(page);
  expect.soft(await unfitIn(page, RULES_OF_SIGHT), `${screen}, narrow and dark`).toEqual([]);
}

// Nothing is written here: each lane takes a part.
test.describe.configure({ mode: 'parallel' });

for (const { name, screensFrom } of [
  { name: 'those that need no more than their address', screensFrom: () => [...inProgramme(OF_PROGRAMME), ...OF_PERSON] },
  { name: 'those about one thing, and in the field', screensFrom: async (page: Page) => [...IN_FIELD, ...inProgramme(await screensAboutOne(page))] },
]) {
  test(`every screen is fit for everybody: ${name}`, async ({ page }) => {
    test.setTimeout(900_000);
    await signIn(page, 'coordinator');
    const complaints = complaintsOf(page);
    for (const screen of await screensFrom(page)) await judge(page, screen);
    expect(complaints).toEqual([]);
  });
}
