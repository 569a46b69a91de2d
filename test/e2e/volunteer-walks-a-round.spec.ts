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
  const told = await page.getByText(/Then, on/).first().textContent();
  return Number(/(\d+) alive/.exec(told ?? '')?.[1] ?? 1);
}

/** Sends at once what would go out by itself a little later. */
async function sendNow(page: Page): Promise<void> {
  // The line that leads there goes once it has gone out by itself, which a slow machine leaves time for.
  await page.goto(`${demoUrl()}/field#/outbox`);
  await expect(page.getByRole('heading', { name: 'Only on this phone' })).toBeVisible();
  const now = page.getByRole('button', { name: 'Send now' });
  // On a slow machine it has gone out by itself.
  if (await now.isVisible()) await now.click();
  await expect(page.getByText('Everything that was told on this phone is in the books.')).toBeVisible();
}

test('counts on a phone with its own pad; each batch is kept at once, undone by a tap, and shows what the books will say', async ({ page }) => {
  const complaints = complaintsOf(page);
  await signIn(page, 'volunteer');
  await beginRound(page, 'Frame 1');
  const label = (await page.locator('#stop').textContent()) ?? '';
  await tap(page, String(await countedThen(page)));
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByText(`${label} is kept on this phone`)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText(`${label} is taken back`)).toBeVisible();
  // Back at that batch: what is tapped in now is meant for it.
  await expect(page.locator('#stop')).toHaveText(label);
  await page.getByRole('button', { name: 'Nothing to report' }).click();
  await expect(page.getByText(/is kept on this phone/)).toBeVisible();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await expect(page.getByRole('heading', { name: 'What you told' })).toBeVisible();
  await expect(page.getByText('The books stay as they are.')).toBeVisible();
  await sendNow(page);
  expect(complaints).toEqual([]);
});

test('tells what died of what the eye sees, and tells it otherwise after it was sent; the first words stay readable', async ({ page }) => {
  await signIn(page, 'volunteer');
  await beginRound(page, 'Frame 1');
  const before = await countedThen(page);
  await tap(page, String(before - 1));
  await page.getByRole('button', { name: /^Dead/ }).click();
  await page.getByRole('button', { name: 'grey fluff' }).click();
  await tap(page, '1');
  await page.getByRole('button', { name: '1 dead: done' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await expect(page.getByText(new RegExp(`→ ${before - 1}$`)).last()).toBeVisible();
  const label = await page.locator('.tie-label').first().textContent();
  await sendNow(page);
  await page.goBack();

  await page.getByRole('button', { name: 'Go on: 1 batch tapped in' }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await expect(page.getByText('in the books')).toBeVisible();
  await page.getByRole('button', { name: 'Change it' }).click();
  await page.getByRole('button', { name: 'Clear' }).click();
  await tap(page, String(before));
  await page.getByRole('button', { name: /^Dead/ }).click();
  await page.getByRole('button', { name: 'grey fluff' }).click();
  await page.getByRole('button', { name: 'Clear' }).click();
  await page.getByRole('button', { name: 'None dead' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  await page.getByRole('button', { name: 'Finish early' }).click();
  await sendNow(page);

  await page.goto(`${demoUrl()}${HARROWDALE}/batches?label=${encodeURIComponent(label ?? '')}`);
  await page.getByText('mended once').last().click();
  await expect(page.getByText(/First written: .*1 dead \(grey fluff\)/).last()).toBeVisible();
});

test('with the network off it opens, walks and keeps; closed and opened again nothing is lost, and it is sent by itself', async ({ page, context }) => {
  await signIn(page, 'volunteer');
  await beginRound(page, 'Frame 2');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByText('No signal.')).toBeVisible();
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByRole('button', { name: 'Skip' }).click();
  const counted = await countedThen(page);
  await tap(page, String(counted));
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByText(/is kept on this phone/)).toBeVisible();
  await page.close();

  const again = await context.newPage();
  await again.goto(`${demoUrl()}/field`);
  await expect(again.getByText('1 entry is only on this phone')).toBeVisible();
  await again.getByRole('link', { name: /^Walk Frame 2/ }).click();
  await expect(again.getByText('1 batch told on this walk')).toBeVisible();

  await context.setOffline(false);
  await expect(again.getByText('only on this phone,')).toBeHidden({ timeout: 45_000 });
  await again.getByRole('button', { name: /Go on/ }).click();
  await again.getByRole('button', { name: 'Finish early' }).click();
  await expect(again.getByText('in the books')).toBeVisible();
});

test('two people walk one place at once, and the books hold', async ({ browser }) => {
  const pages = await Promise.all((['volunteer', 'coordinator'] as const).map(async (who) => {
    const page = await (await browser.newContext({ viewport: { width: 360, height: 740 } })).newPage();
    await signIn(page, who);
    await beginRound(page, 'Frame 3');
    await tap(page, String(await countedThen(page)));
    await page.getByRole('button', { name: 'Next' }).click();
    await expect(page.getByText(/is kept on this phone/)).toBeVisible();
    await page.getByRole('button', { name: 'Finish early' }).click();
    return page;
  }));
  await Promise.all(pages.map((page) => sendNow(page)));
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
  await expect(page.getByText(/is kept on this phone/)).toBeVisible();
  await looks('what was kept');
  await page.getByRole('button', { name: 'Finish early' }).click();
  await expect(page.getByText('A note.')).toBeVisible();
  await looks('what was told');
  await page.goto(`${demoUrl()}/field#/outbox`);
  await expect(page.getByRole('heading', { name: 'Only on this phone' })).toBeVisible();
  await looks('what is only here');
  await page.getByRole('link', { name: 'On this phone' }).click();
  await expect(page.getByRole('heading', { name: 'On this phone' })).toBeVisible();
  await looks('what is on the phone');
  await page.getByRole('link', { name: 'Pack a place' }).click();
  await expect(page.getByRole('button', { name: /^Pack/ }).first()).toBeVisible();
  await looks('packing');
});
