import { expect, test } from '@playwright/test';
import { demoUrl, HARROWDALE, signIn } from './product/people.ts';
import { dies, packs, type Phone, phone, storedOn, thrownAway } from './product/phone.ts';

/** So many batches each person counts without a signal. */
const BATCHES = 12;
const PLACE = 'Frame 1';
/** Of a hundred replies, so many are lost after the server has written. */
const LOST_OF_100 = 30;

/** Counts batch after batch, from the first one without an answer on. @param alive of each */
async function counts({ page }: Phone, n: number, alive: string): Promise<void> {
  await page.goto(`${demoUrl()}/field#/harrowdale`);
  await page.getByRole('link', { name: `Walk ${PLACE}` }).click();
  await page.getByRole('button', { name: /^(Begin|Go on)/ }).click();
  const skip = page.getByRole('heading', { name: `${PLACE}: how do you find it?` });
  await expect(skip.or(page.getByRole('button', { name: 'Finish early' }))).toBeVisible();
  if (await skip.isVisible()) await page.getByRole('button', { name: 'Skip' }).click();
  for (let each = 0; each < n; each += 1) {
    const label = (await page.locator('#stop').textContent()) ?? '';
    await page.getByRole('button', { name: alive, exact: true }).click();
    await page.getByRole('button', { name: 'Next' }).click();
    await expect(page.getByText(`${label} is kept on this phone`)).toBeVisible();
  }
}

interface Kept {
  readonly id: string;
  readonly work: { readonly entry: { readonly saying: { readonly batchId: string; readonly alive: number } } };
}

/**
 * Comes back into a weak signal: some replies are lost on the way, in an order that is the same in every run.
 *
 * @param signsIn who has to sign in again, since the phone has forgotten it
 */
async function comesBack({ page, context }: Phone, signsIn?: 'volunteer'): Promise<number> {
  let asked = 0;
  let lost = 0;
  await context.route('**/api/v1/programmes/*/entries', async (route) => {
    const answer = await route.fetch();
    asked += 1;
    // The first always, so that at least one is sent twice.
    if (asked !== 1 && (asked * 37) % 100 >= LOST_OF_100) return route.fulfill({ response: answer });
    lost += 1;
    await route.abort('connectionreset');
  });
  await context.setOffline(false);
  if (signsIn) await signIn(page, signsIn);
  await page.goto(`${demoUrl()}/field#/outbox`);
  const done = page.getByText('Everything that was told on this phone is in the books.');
  await expect(async () => {
    const now = page.getByRole('button', { name: 'Send now' });
    if (await now.isVisible()) await now.click();
    await expect(done).toBeVisible({ timeout: 2_000 });
  }).toPass({ timeout: 60_000 });
  return lost;
}

test('two people count the same trees without a signal, a phone dies, replies are lost: everything is in the books, once', async () => {
  test.setTimeout(240_000);
  const second = await phone();
  let first = await phone();
  try {
    await signIn(first.page, 'volunteer');
    await signIn(second.page, 'coordinator');
    await packs(first, PLACE);
    await packs(second, PLACE);
    await counts(first, BATCHES / 2, '3');
    await counts(second, BATCHES, '2');
    first = await dies(first);
    await first.context.setOffline(true);
    await counts(first, BATCHES / 2, '3');
    const kept = [...(await storedOn<Kept>(first, 'outbox')), ...(await storedOn<Kept>(second, 'outbox'))];
    expect(new Set(kept.map(({ id }) => id)).size).toBe(2 * BATCHES);

    // Whoever logged last comes home first.
    expect(await comesBack(second)).toBeGreaterThan(0);
    // A phone that died may have forgotten who was signed in; what was told on it, it has not.
    expect(await comesBack(first, 'volunteer')).toBeGreaterThan(0);

    for (const { id, work: { entry: { saying: { batchId, alive } } } } of kept) {
      const batch = (await (await second.context.request.get(`${demoUrl()}/api/v1${HARROWDALE}/batches/${batchId}`)).json()) as { history: { id: string; said: { alive: number } }[] };
      expect(batch.history.filter((entry) => entry.id === id).map(({ said }) => said.alive)).toEqual([alive]);
    }
  } finally {
    await Promise.all([first, second].map(thrownAway));
  }
});
