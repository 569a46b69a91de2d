import { expect, type Page, test } from '@playwright/test';
import { answerForm } from './product/forms.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

// What one test sets up, the next one works with.
test.describe.configure({ mode: 'serial' });

const open = (page: Page, path: string) => page.goto(`${demoUrl()}${HARROWDALE}${path}`);

async function openBatch(page: Page, label: string): Promise<void> {
  await open(page, '/batches');
  await page.getByLabel('Find by label').fill(label);
  await page.getByRole('button', { name: 'Find', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(label);
}

const way = (page: Page, words: string) => page.getByRole('navigation', { name: 'What now?' }).getByRole('link', { name: words, exact: true });
const here = (page: Page, plants: string) => expect(page.getByRole('term').filter({ hasText: 'Here now' }).locator('+ dd')).toHaveText(plants);
/** The first choice of a list that has these words in it. */
const choiceWith = async (page: Page, label: string, words: string) => page.getByRole('combobox', { name: label }).locator('option').filter({ hasText: words }).first().innerText();

test('a tray of thirty is sorted in one act, and the one that is missing is asked for before the label goes', async ({ page }) => {
  test.setTimeout(120_000);
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await open(page, '/places/new');
  await answerForm(page, { 'What it is': 'bench', Name: 'Sorting bench' }, 'Save', 'Sorting bench');
  await open(page, '/stick/opening');
  await answerForm(page, { 'How many': '30', 'At which stage': 'cutting', 'Donor tree': (await choiceWith(page, 'Donor tree', 'CR-01')) || '', 'Where they stand': 'Sorting bench', Label: 'SORT1' }, 'They are here', 'SORT1');

  await way(page, 'Sort the tray').click();
  await page.getByRole('textbox', { name: 'Lifted: young plants (liners)' }).fill('14');
  await page.getByRole('combobox', { name: /^Where the lifted ones stand/ }).selectOption({ label: 'Sorting bench' });
  await page.getByRole('textbox', { name: /^Label of the lifted ones/ }).fill('SORT2');
  await page.getByRole('textbox', { name: 'Put back into the tray' }).fill('9');
  await page.getByRole('textbox', { name: /^How many dead/ }).first().fill('5');
  await page.getByRole('combobox', { name: /^What do you see/ }).first().selectOption({ label: 'black base' });
  await page.getByRole('textbox', { name: 'Thrown out, alive' }).fill('1');
  await page.getByRole('textbox', { name: /^Why thrown out/ }).fill('broken top');
  await expect(page.getByText('In the books: 30. Told so far: 29.')).toBeVisible();
  await expect(page.getByText('1 unaccounted: look under the bench').first()).toBeVisible();

  await page.getByRole('button', { name: 'It is sorted' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'look under the bench' })).toBeVisible();
  await page.getByRole('checkbox', { name: /left as missing/ }).check();
  await page.getByRole('button', { name: 'It is sorted' }).click();
  await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
  await here(page, '9 plants');
  for (const words of ['5 died (black base)', '1 missing: nobody saw what became of them', '1 thrown out', '14 went on']) await expect(page.getByText(words).first()).toBeVisible();
  expect(complaints).toEqual([]);
});

test('the lifted are potted up among many, tagged one by one at the site, and each leads back to its tray', async ({ page }) => {
  test.setTimeout(150_000);
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await open(page, '/sites/new');
  await answerForm(page, { 'Name of the site': 'Sorting meadow' }, 'Save', 'Sorting meadow');
  await answerForm(page, { 'Name of the plot': 'Row end' }, 'Add a plot', 'Sorting meadow');

  await open(page, '/bench/potting');
  await answerForm(page, { 'Where to': 'Sorting bench', Container: '9 cm pot', 'How many: SORT2': '12', 'Label of the new batch: SORT2': 'SORT3' }, 'They are potted up', 'Pot up many batches');
  await expect(page.getByText('1 line is written.')).toBeVisible();

  await open(page, '/bench/planting');
  await page.getByRole('textbox', { name: 'Labels of the tags' }).fill('TS01…TS12');
  await page.getByRole('textbox', { name: /^Positions on the plot/ }).fill('3 x 4');
  await page.getByRole('textbox', { name: /^How many: SORT3/ }).fill('11');
  await expect(page.getByText('11 plants, 12 labels, 12 positions.')).toBeVisible();
  await page.getByRole('textbox', { name: /^How many: SORT3/ }).fill('12');
  await expect(page.getByRole('row', { name: 'TS12 SORT3 r3 c4' })).toBeVisible();
  await answerForm(page, { 'Where to': 'Sorting meadow › Row end' }, 'They are planted', 'Plant out with tags');
  await expect(page.getByText('12 trees are planted')).toBeVisible();

  await openBatch(page, 'TS07');
  await here(page, '1 plant');
  for (const words of ['SORT1', 'SORT2', 'SORT3', 'TS07']) await expect(page.getByRole('region', { name: 'Family line' })).toContainText(words);
  expect(complaints).toEqual([]);
});

test('held plants say so and wait; released, they may go on', async ({ page }) => {
  test.setTimeout(90_000);
  await signIn(page, 'coordinator');
  await open(page, '/stick/opening');
  await answerForm(page, { 'How many': '6', 'At which stage': 'cutting', 'Donor tree': (await choiceWith(page, 'Donor tree', 'CR-01')) || '', 'Where they stand': 'Sorting bench', Label: 'SORT9' }, 'They are here', 'SORT9');
  await open(page, '/holds');
  await answerForm(page, { 'Label of a batch': 'SORT9', Why: 'black bases' }, 'Hold it', 'Held');
  await expect(page.getByText('black bases').first()).toBeVisible();
  await openBatch(page, 'SORT9');
  await expect(page.getByText('These plants are held.')).toBeVisible();
  await expect(way(page, 'Sort the tray')).toHaveCount(0);

  await way(page, 'Release').click();
  await answerForm(page, { Why: 'looked over twice' }, 'Release them', 'SORT9');
  await expect(way(page, 'Sort the tray')).toBeVisible();
});

test('of which tree a sticking is, is said anew only after all that it changes has been shown', async ({ page }) => {
  test.setTimeout(90_000);
  await signIn(page, 'coordinator');
  await openBatch(page, 'TS07');
  await page.getByRole('link', { name: 'Say of which tree it is' }).click();
  await page.getByRole('combobox', { name: 'Donor tree' }).selectOption({ label: 'not known any more' });
  await page.getByRole('button', { name: 'Show what it would change' }).click();
  const changes = page.getByRole('region', { name: 'What it would change', exact: true });
  for (const words of ['SORT1', 'TS12', 'Sorting meadow: 12 trees']) await expect(changes).toContainText(words);
  await answerForm(page, { 'How one knows': 'two labels lay on the floor' }, 'It is of that tree', 'Of which donor tree');
  await expect(page.getByText('The donor tree is not known.')).toBeVisible();
});
