import { expect, test } from '@playwright/test';
import { answerForm } from './product/forms.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

test('a request is promised from many donor trees, picked on paper, despatched once, and its note tells the families', async ({ page }) => {
  test.setTimeout(120_000);
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await page.goto(`${demoUrl()}${HARROWDALE}/requests/new`);
  await answerForm(page, { 'Who asks': 'Winterbeck Rangers', Species: 'juniper', Stage: 'potted', 'How many plants': '6', 'At most of one donor tree': '1' }, 'Save', 'Winterbeck Rangers');
  const request = page.url();

  await page.getByRole('link', { name: 'Set plants aside' }).click();
  await expect(page.getByText(/plants of 6 donor trees/)).toBeVisible();
  await page.getByRole('button', { name: 'Set these aside' }).click();
  await expect(page.getByText('6 of 6 set aside, of 6 donor trees.')).toBeVisible();

  await page.getByRole('link', { name: 'Pick list' }).click();
  await expect(page.getByRole('rowheader', { name: 'All together' }).locator('+ td')).toHaveText('6');
  const pdf = await page.request.get(`${request}/pick/pdf?paper=letter`);
  expect(pdf.headers()['content-type']).toBe('application/pdf');

  await page.goto(request);
  await page.getByRole('link', { name: 'Despatch', exact: true }).click();
  await expect(page.getByText(/ask a licensed person/)).toBeVisible();
  await page.getByRole('button', { name: 'They have gone' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Despatch note');
  await expect(page.getByText('6 plants of 6 donor trees')).toBeVisible();
  expect((await page.request.get(`${page.url()}/pdf`)).headers()['content-type']).toBe('application/pdf');
  await page.goto(`${request}/despatch`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Despatch note');
  expect(complaints).toEqual([]);
});
