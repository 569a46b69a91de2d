import { expect, type Page, test } from '@playwright/test';
import { smallTargetsIn, unfitIn } from './product/fitness.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

test.use({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });

/** Goes to the place itself, which is asked about before its batches. */
async function enter(page: Page, place: string): Promise<void> {
  // From the list of places: what is due on home is only what waits.
  await page.goto(`${demoUrl()}${HARROWDALE}/places`);
  await page.getByRole('link', { name: `Walk ${place} and log it` }).click();
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.getByRole('heading', { name: `${place}: how do you find it?` })).toBeVisible();
}

async function beginRound(page: Page, place: string): Promise<void> {
  await enter(page, place);
  await page.getByRole('button', { name: 'Skip' }).click();
}

/** Taps figures on the pad of the screen. */
async function tap(page: Page, figures: string): Promise<void> {
  for (const figure of figures) await page.getByRole('button', { name: figure, exact: true }).click();
}

/** How many the books held when the batch was last counted, as the screen tells it. */
async function countedThen(page: Page): Promise<number> {
  const told = await page.getByText(/alive/).first().textContent();
  return Number(/(\d+) alive/.exec(told ?? '')?.[1] ?? 1);
}

test('counts on a phone with its own pad, sees what the books make of it, and saves', async ({ page }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'volunteer');
  await beginRound(page, 'Frame 1');
  await tap(page, String(await countedThen(page)));
  await page.getByRole('button', { name: 'Next' }).click();
  await page.getByRole('button', { name: 'Nothing to report' }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await expect(page.getByRole('heading', { name: 'What the books make of it' })).toBeVisible();
  await expect(page.getByText('The books stay as they are.')).toBeVisible();
  await page.getByRole('button', { name: 'Save the round' }).click();
  await expect(page.getByText('2 batches are in the books.')).toBeVisible();
  expect(complaints).toEqual([]);
});

test('tells what died of what the eye sees, and mends it afterwards; the first words stay readable', async ({ page }) => {
  await signIn(page, 'volunteer');
  // Where nothing has happened since it was last counted: the books hold what the screen tells.
  await beginRound(page, 'Frame 1');
  const before = await countedThen(page);
  await tap(page, String(before - 1));
  await page.getByRole('button', { name: /^Dead/ }).click();
  await page.getByRole('button', { name: 'grey fluff' }).click();
  await tap(page, '1');
  await page.getByRole('button', { name: '1 dead: done' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await expect(page.getByText(`${before} → ${before - 1}`)).toBeVisible();
  await page.getByRole('button', { name: 'Save the round' }).click();
  await page.getByRole('link', { name: 'Mend' }).click();

  const entry = page.getByRole('region', { name: 'History' }).getByRole('listitem').filter({ hasText: '1 dead (grey fluff)' });
  await entry.last().getByRole('link', { name: 'Mend' }).click();
  await page.getByLabel('What do you see').first().selectOption('chewed');
  await page.getByLabel('Why').fill('Seen again by daylight.');
  await page.getByRole('button', { name: 'Mend it' }).click();
  await page.getByText('mended once').last().click();
  await expect(page.getByText(/First written: .*1 dead \(grey fluff\)/).last()).toBeVisible();
});

test('with the network off nothing is lost, also through a reload, and it is sent once later', async ({ page, context }) => {
  await signIn(page, 'volunteer');
  await beginRound(page, 'Frame 2');
  const counted = await countedThen(page);
  await tap(page, String(counted));
  await page.getByRole('button', { name: 'Next' }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Save the round' }).click();
  await expect(page.getByText(/kept on this phone/)).toBeVisible();

  await context.setOffline(false);
  await page.reload();
  await expect(page.getByText('Kept on this phone since you were last here.')).toBeVisible();
  await page.getByRole('button', { name: /Go on/ }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await page.getByRole('button', { name: /Save the round|Send again/ }).click();
  await expect(page.getByText('1 batch is in the books.')).toBeVisible();
});

test('two people walk one place at once, and the books hold', async ({ browser }) => {
  const pages = await Promise.all((['volunteer', 'coordinator'] as const).map(async (who) => {
    const page = await (await browser.newContext({ viewport: { width: 360, height: 740 } })).newPage();
    await signIn(page, who);
    await beginRound(page, 'Frame 3');
    await tap(page, String(await countedThen(page)));
    await page.getByRole('button', { name: 'Next' }).click();
    await page.getByRole('button', { name: 'Finish early' }).click();
    return page;
  }));
  await Promise.all(pages.map((page) => page.getByRole('button', { name: 'Save the round' }).click()));
  for (const page of pages) await expect(page.getByText('1 batch is in the books.')).toBeVisible();
});

test('every screen of a round is fit for everybody, and everything on it a target of 56 px or more', async ({ page }) => {
  await signIn(page, 'volunteer');
  const looks = async (where: string): Promise<void> => {
    expect.soft(await unfitIn(page), where).toEqual([]);
    expect.soft(await smallTargetsIn(page), where).toEqual([]);
  };
  await enter(page, 'Frame 1');
  await looks('the place');
  await page.getByRole('button', { name: 'Skip' }).click();
  await looks('counting');
  await page.getByRole('button', { name: /^Dead/ }).click();
  await looks('the dead');
  await page.getByRole('button', { name: 'None dead' }).click();
  await page.getByRole('button', { name: 'Nothing to report' }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await expect(page.getByText('A note.')).toBeVisible();
  await looks('what the books make of it');
});
