import { expect, type Page } from '@playwright/test';

/** What is answered, by the words at each field. */
export type Answers = Readonly<Record<string, string>>;

/**
 * Fills a form as a person does: finds each field by its words, types, chooses from a list, or
 * marks one of a few; then sends it and waits until the next page has come.
 *
 * @param send the words on the button
 * @param lead where it leads: the heading of the next page, or a part of it
 */
export async function answerForm(page: Page, answers: Answers, send: string, lead: string | RegExp): Promise<void> {
  for (const [words, said] of Object.entries(answers)) await answer(page, words, said);
  await page.getByRole('button', { name: send, exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(lead);
}

async function answer(page: Page, words: string, said: string): Promise<void> {
  // A field that may stay empty says so behind its words.
  const label = new RegExp(`^${words.replaceAll(/[.()]/g, '\\$&')}( \\(may stay empty\\))?$`);
  const group = page.getByRole('group', { name: label });
  if ((await group.count()) > 0) return group.getByRole('radio', { name: said }).check();
  const list = page.getByRole('combobox', { name: label });
  if ((await list.count()) > 0) return void (await list.selectOption({ label: said }));
  const tick = page.getByRole('checkbox', { name: label });
  if ((await tick.count()) > 0) return tick.check();
  await page.getByRole('textbox', { name: label }).fill(said);
}
