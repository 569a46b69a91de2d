import { expect, type Page, test } from '@playwright/test';
import { answerForm } from './product/forms.ts';
import { complaintsOf, demoUrl, HARROWDALE, signIn } from './product/people.ts';

// What one test sets up, the next one works with.
test.describe.configure({ mode: 'serial' });

const open = (page: Page, path: string) => page.goto(`${demoUrl()}${HARROWDALE}${path}`);

/** Opens the batch with this label. */
async function openBatch(page: Page, label: string): Promise<void> {
  await open(page, '/batches');
  await page.getByLabel('Find by label').fill(label);
  await page.getByRole('button', { name: 'Find', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(label);
}

/** Does something with a batch on the page of that act, and comes back to the batch. */
async function act(page: Page, label: string, words: string, answers: Readonly<Record<string, string>>, send: string): Promise<void> {
  await openBatch(page, label);
  const way = page.getByRole('navigation', { name: 'What now?' }).getByRole('link', { name: words, exact: true });
  if (!(await way.isVisible())) await page.getByText('More that can happen').click();
  await way.click();
  await expect(page.getByRole('button', { name: send, exact: true })).toBeVisible();
  await answerForm(page, answers, send, label);
  await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
}

/** @param plants as the page says it */
const here = (page: Page, plants: string) => expect(page.getByRole('term').filter({ hasText: 'Here now' }).locator('+ dd')).toHaveText(plants);

test('a species, a stand, its trees, leave to collect, a recipe, trays and a site are written down', async ({ page }) => {
  test.setTimeout(120_000);
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await open(page, '/taxa/new');
  await answerForm(page, { 'Scientific name': 'Juniperus communis subsp. nana', 'Common name': 'dwarf juniper' }, 'Save', 'dwarf juniper');
  await open(page, '/stands/new');
  await answerForm(page, { 'Name of the stand': 'Skell Gill, upper end' }, 'Save', 'Skell Gill, upper end');
  for (const label of ['SU-01', 'SU-02']) {
    await open(page, '/donor-trees/new');
    await page.getByText('Tell the exact place').click();
    await answerForm(page, {
      Label: label, Stand: 'Skell Gill, upper end', Species: 'dwarf juniper (Juniperus communis subsp. nana)', Sex: 'female', 'Age class': 'old',
      'Estimated age in years': '120', 'Elevation in steps of 50 m': '450', 'Latitude in degrees': '54.41234', 'Longitude in degrees': '-2.16789',
    }, 'Save', label);
    await expect(page.getByText('54.41234').first()).toBeVisible();
  }
  await open(page, '/permissions/new');
  await answerForm(page, { 'Who allowed it': 'The Thornber estate', 'Which land': 'Upper Skell Gill', 'Only for this stand': 'Skell Gill, upper end', 'Cuttings allowed in all': '60' }, 'Save', 'Upper Skell Gill');
  await open(page, '/recipes/new');
  await answerForm(page, { 'Name of the recipe': 'Heel in sand', Medium: 'sharp sand' }, 'Save', 'Heel in sand');
  for (const [name, kind] of [['Upper bench', 'bench'], ['Tray U1', 'tray'], ['Tray U2', 'tray']] as const) {
    await open(page, '/places/new');
    const within: Readonly<Record<string, string>> = kind === 'tray' ? { 'Where it stands': 'Upper bench', 'Rows of the tray': '8', 'Filled with': 'sharp sand' } : {};
    await answerForm(page, { 'What it is': kind, Name: name, ...within }, 'Save', name);
  }
  await open(page, '/sites/new');
  await answerForm(page, { 'Name of the site': 'Skell meadow' }, 'Save', 'Skell meadow');
  await answerForm(page, { 'Name of the plot': 'North edge' }, 'Add a plot', 'Skell meadow');
  await expect(page.getByText('North edge').first()).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a volunteer reads about the tree, and nowhere exactly where it stands', async ({ page }) => {
  await signIn(page, 'volunteer');
  await open(page, '/donor-trees');
  await page.getByRole('link', { name: 'SU-01' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('SU-01');
  expect(await page.content()).not.toContain('54.41');
});

test('a trip’s bundles are stuck into trays by rows: two trees in one tray, one tree over two trays', async ({ page }) => {
  test.setTimeout(90_000);
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await open(page, '/trips/new');
  await answerForm(page, { Stand: 'Skell Gill, upper end' }, 'Save, then add bundles', 'Skell Gill, upper end');
  for (const [tree, cuttings] of [['SU-01', '30'], ['SU-02', '12']] as const) {
    await answerForm(page, { 'Donor tree': tree, Cuttings: cuttings, Shoot: 'side shoot', 'Base of the cutting': 'with a heel' }, 'Add this bundle', 'Skell Gill, upper end');
    await expect(page.getByRole('row').filter({ hasText: tree })).toContainText(cuttings);
  }
  await page.getByRole('link', { name: 'Stick these cuttings' }).click();
  await expect(page.getByRole('heading', { name: 'The tray' })).toBeVisible();
  const tray = (name: string) => page.locator('select[name=placeId] option').filter({ hasText: name }).innerText();
  await answerForm(page, {
    'Into which tray': await tray('Tray U1'), Recipe: 'Heel in sand (1)',
    'How many: SU-01': '20', 'Rows: SU-01': '1-4', 'Label: SU-01': 'U101', 'How many: SU-02': '12', 'Rows: SU-02': '5-7', 'Label: SU-02': 'U102',
  }, 'They are stuck', 'Stick cuttings');
  await expect(page.getByText('2 bundles are stuck into that tray.')).toBeVisible();
  await answerForm(page, { 'Into which tray': await tray('Tray U2'), Recipe: 'Heel in sand (1)', 'How many: SU-01': '10', 'Rows: SU-01': '1-2', 'Label: SU-01': 'U103' }, 'They are stuck', 'Stick cuttings');
  await expect(page.getByText('Every cutting of this trip is stuck.')).toBeVisible();
  await openBatch(page, 'U101');
  await here(page, '20 plants');
  expect(complaints).toEqual([]);
});

test('rooted cuttings become young plants, are potted up, moved, given out and planted; the tray is called; the books close', async ({ page }) => {
  test.setTimeout(150_000);
  const complaints = complaintsOf(page);
  await signIn(page, 'coordinator');
  await act(page, 'U101', 'Count', { 'How did you look': 'lifted, roots seen', 'How many are alive': '18', 'Of them rooted': '12' }, 'Write the count');
  await expect(page.getByText('2 missing: nobody saw what became of them').first()).toBeVisible();
  await act(page, 'U101', 'Lift', { 'How many': '12', 'Where to': 'Upper bench', 'Label of the new batch': 'U111' }, 'They are lifted');
  await act(page, 'U101', 'Call the tray', { 'How many': '6' }, 'The tray is called');
  await here(page, 'no plants left');
  await act(page, 'U111', 'Pot up', { 'How many': '8', 'Where to': 'Upper bench', 'Label of the new batch': 'U121', Container: '9 cm pot' }, 'They are potted up');
  await act(page, 'U111', 'Move', { 'How many': '4', 'Where to': 'Standing ground 1' }, 'It stands there now');
  await act(page, 'U121', 'Give out', { 'How many': '1', 'To whom, outside': 'the school at Lowmire' }, 'They are given out');
  await act(page, 'U121', 'Plant out', { 'How many': '5', 'Where to': 'Skell meadow › North edge', 'Label of the new batch': 'U131' }, 'They are planted');
  await here(page, '2 plants');
  await act(page, 'U131', 'Check', { 'How many are alive': '4', 'Not found': '1' }, 'Write the check');
  await here(page, '5 plants');
  expect(complaints).toEqual([]);
});

test('a tree at the site leads back to its wild donor tree in one step, and that tree to all that came of it', async ({ page }) => {
  await signIn(page, 'volunteer');
  await openBatch(page, 'U131');
  const line = page.getByRole('region', { name: 'Family line' });
  for (const words of ['Skell Gill, upper end', 'U101', 'U111', 'U121', 'U131']) await expect(line).toContainText(words);
  await line.getByRole('link', { name: 'SU-01' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('SU-01');
  const came = page.locator('main');
  for (const words of ['All that came of it', 'Skell meadow', '30 cuttings stuck', 'U131', 'U103']) await expect(came).toContainText(words);
});
