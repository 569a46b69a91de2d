import { expect } from '@playwright/test';
import { demoUrl } from '../../e2e/product/people.ts';
import { BENCH } from './bench-of-forty.ts';
import type { OnAWalk } from './on-a-walk.ts';
import { lineOf } from './told.ts';

interface BatchThere {
  readonly id: string;
  readonly label: string;
  readonly stage: string;
}

/** By the words of its button: what the books call it, and at which stages it fits. */
const ACTS = [
  { words: 'Lift out of the tray', kind: 'lifted', stages: ['cutting'] },
  { words: 'Pot up', kind: 'potted', stages: ['cutting', 'liner'] },
  { words: 'Plant out', kind: 'planted', stages: ['potted'] },
  { words: 'Move', kind: 'moved', stages: ['cutting', 'liner', 'potted'] },
  { words: 'Call the tray', kind: 'called', stages: ['cutting'] },
  { words: 'Throw out', kind: 'thrownOut', stages: ['cutting', 'liner', 'potted'] },
  { words: 'Write a note', kind: 'noted', stages: ['cutting', 'liner', 'potted'] },
] as const;

/** Whoever does more than count: each thing that the phone knows, and some of it taken back. */
export class AtTheBench {
  #made = 0;

  constructor(readonly by: OnAWalk, readonly walkId: string, readonly batches: readonly BatchThere[]) {}

  /** Every kind of act once, on batches that are drawn. */
  async doesEverything(): Promise<void> {
    for (const act of ACTS) await this.does(act);
    await this.#sticks();
    await this.#writesAboutThePlace();
  }

  async does({ words, kind, stages }: (typeof ACTS)[number]): Promise<void> {
    const { by, by: { page } } = this;
    const { id, label } = by.draw(...this.batches.filter(({ stage }) => stages.some((one) => one === stage)));
    await page.goto(`${demoUrl()}/field#/harrowdale/batch/${this.walkId}/${id}`);
    await by.button(words).click();
    const said: Record<string, unknown> = {};
    if (kind === 'noted') await page.getByLabel('What do you see?').fill(String((said['text'] = `dry edge ${this.#next()}`)));
    else if (kind === 'moved' && by.dice() < 0.4) await page.getByLabel('All of them, without counting').check();
    else await this.#taps(Number((said['n'] = by.draw(1, 2, 3))));
    if (kind === 'thrownOut') await page.getByLabel('Why?').fill('broken');
    if (['lifted', 'potted', 'planted', 'moved'].includes(kind)) await this.#choosesWhere();
    await by.button('Keep it').click();
    await expect(page.getByText(`${label} is kept on this phone`)).toBeVisible();
    by.acts += 1;
    if (by.dice() < 0.15) return this.#undoes(label);
    by.told.push(lineOf(label, { kind, ...said }));
  }

  /** Takes back the last thing of that kind that was told of a batch, whether it is out already or not. */
  async takesBackSome(n: number): Promise<void> {
    const { by, by: { page } } = this;
    const kinds: readonly string[] = ACTS.map(({ kind }) => kind);
    for (let each = 0; each < n; each += 1) {
      const line = by.draw(...by.told.filter((one) => kinds.includes(one.split(' ')[1] ?? '') && !one.includes('looked over')));
      const [label = '', kind = '', ...rest] = line.split(' ');
      await page.goto(`${demoUrl()}/field#/harrowdale/batch/${this.walkId}/${this.batches.find((batch) => batch.label === label)?.id}`);
      const act = ACTS.find((one) => one.kind === kind);
      const told = page.getByRole('listitem').filter({ hasText: kind === 'noted' ? rest.join(' ') : new RegExp(`^${rest[0]} ${IN_WORDS[act?.kind ?? 'noted']}`) });
      await told.first().getByRole('button', { name: 'Take it back' }).click();
      await expect(page.getByText(`${label} is taken back`)).toBeVisible();
      by.told.splice(by.told.indexOf(line), 1);
      by.acts += 1;
    }
  }

  async #undoes(label: string): Promise<void> {
    await this.by.button('Undo').click();
    await expect(this.by.page.getByText(`${label} is taken back`)).toBeVisible();
    this.by.acts += 1;
  }

  async #sticks(): Promise<void> {
    const { by, by: { page } } = this;
    await page.goto(`${demoUrl()}/field#/harrowdale/stick`);
    const label = `NEW-${by.name}-${this.#next()}`;
    await page.getByRole('group', { name: 'Whose cuttings?' }).getByRole('radio').first().check();
    await page.getByRole('group', { name: 'Into which tray?' }).getByRole('radio').first().check();
    const n = by.draw(2, 3, 4);
    await this.#taps(n);
    await page.getByLabel('New label').fill(label);
    await by.button('Keep it').click();
    await expect(page.getByText(/is kept on this phone/)).toBeVisible();
    by.acts += 1;
    by.told.push(lineOf(label, { kind: 'stuck', n }));
  }

  /** Stands in no history of a batch, so it is not among what is told of batches. */
  async #writesAboutThePlace(): Promise<void> {
    const { by, by: { page } } = this;
    await page.goto(`${demoUrl()}/field#/harrowdale/note/${this.walkId}`);
    await page.getByLabel('What do you see?').fill(`a leaking tap ${this.#next()}`);
    await by.button('Keep it').click();
    await expect(page.getByText(/is kept on this phone/)).toBeVisible();
    by.acts += 1;
  }

  async #choosesWhere(): Promise<void> {
    const places = this.by.page.getByRole('group', { name: 'Where do they go?' }).locator('label').filter({ hasNotText: BENCH }).getByRole('radio');
    await places.nth(Math.floor(this.by.dice() * (await places.count()))).check();
  }

  async #taps(n: number): Promise<void> {
    for (const figure of String(n)) await this.by.button(figure).click();
  }

  #next(): number {
    return (this.#made += 1);
  }
}

const IN_WORDS = { lifted: 'lifted', potted: 'potted up', planted: 'planted', moved: 'moved', called: 'called', thrownOut: 'thrown out', noted: '' } as const;
