import { expect, type Page } from '@playwright/test';
import type { Dice } from '@sprigline/domain';
import { demoUrl } from '../../e2e/product/people.ts';
import type { Phone } from '../../e2e/product/phone.ts';
import { BENCH } from './bench-of-forty.ts';
import { type Answer, linesOf } from './told.ts';

const CAUSES = ['brown and crisp', 'black base', 'grey fluff', 'chewed'] as const;
const UNDONE = 0.06;

/** Somebody with a phone, who tells by the screen and remembers what they told. What they do is drawn. */
export class OnAWalk {
  /** Line by line, all that holds: nothing that was taken back. */
  readonly told: string[] = [];
  /** How often something was told, told otherwise, or taken back. */
  acts = 0;
  readonly #answers = new Map<string, Answer>();

  constructor(public phone: Phone, readonly name: string, readonly dice: Dice) {}

  get page(): Page {
    return this.phone.page;
  }

  button(name: string | RegExp) {
    return this.page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
  }

  draw<T>(...things: readonly T[]): T {
    return things[Math.floor(this.dice() * things.length)] as T;
  }

  /** Answers so many batches, walk after walk. @param day as the screen calls it */
  async answers(n: number, day: 'Today' | 'Yesterday'): Promise<void> {
    await this.#begins(day);
    for (let done = 0; done < n; ) {
      if (await this.page.getByRole('heading', { name: 'What you told' }).isVisible()) await this.#goesRoundAgain(day);
      else if (await this.#answersOne()) done += 1;
    }
  }

  /** To what was left out or undone, or from the beginning. */
  async #goesRoundAgain(day: 'Today' | 'Yesterday'): Promise<void> {
    const rest = this.button('Go on with the rest');
    if (await rest.isVisible()) return rest.click();
    await this.button('Walk this place again').click();
    this.#answers.clear();
    await this.#begins(day);
  }

  async #begins(day: 'Today' | 'Yesterday'): Promise<void> {
    await this.page.goto(`${demoUrl()}/field#/harrowdale`);
    await this.page.getByRole('link', { name: `Walk ${BENCH}` }).click();
    const begin = this.button(/^(Begin|Go on)/);
    await expect(begin).toBeVisible();
    if (((await begin.textContent()) ?? '').startsWith('Begin')) await this.page.getByRole('radio', { name: day }).check();
    await begin.click();
    const place = this.page.getByRole('heading', { name: `${BENCH}: how do you find it?` });
    await expect(place.or(this.button('Finish early')).or(this.page.getByRole('heading', { name: 'What you told' }))).toBeVisible();
    if (await place.isVisible()) await this.button('Skip').click();
  }

  /** @returns whether something was told: not where this walk has an answer already */
  async #answersOne(): Promise<boolean> {
    const label = (await this.page.locator('#stop').textContent()) ?? '';
    if (await this.#passes(label)) return false;
    const answer = await this.#tapsIn();
    await this.button(answer.isFine ? 'Nothing to report' : 'Next').click();
    await this.#isKept(label, answer);
    if (this.dice() >= UNDONE) return true;
    await this.button('Undo').click();
    await this.#isTakenBack(label);
    return true;
  }

  /** By a batch that was told of on this walk. A phone that asks for it once more has forgotten it, and would have it told twice. */
  async #passes(label: string): Promise<boolean> {
    const before = this.#answers.get(label);
    if (!before) return false;
    if (!before.isFine && !(await this.button('Next').isVisible())) throw new Error(`${this.name}’s phone asks for ${label} once more`);
    await this.button(before.isFine ? 'Skip' : 'Next').click();
    return true;
  }

  async #isKept(label: string, answer: Answer): Promise<void> {
    await expect(this.page.getByText(`${label} is kept on this phone`)).toBeVisible();
    this.#forget(label);
    this.told.push(...linesOf(label, answer));
    this.#answers.set(label, answer);
    this.acts += 1;
  }

  async #isTakenBack(label: string): Promise<void> {
    await expect(this.page.getByText(`${label} is taken back`)).toBeVisible();
    this.#forget(label);
    this.#answers.delete(label);
    this.acts += 1;
  }

  /** Leaves out what was told of it on this walk. */
  #forget(label: string): void {
    const before = this.#answers.get(label);
    for (const line of before ? linesOf(label, before) : []) this.told.splice(this.told.lastIndexOf(line), 1);
  }

  async #tapsIn(): Promise<Answer> {
    const [roll, dead] = [this.dice(), {} as Record<string, number>];
    if (roll < 0.1) return { isFine: true, look: 'look', dead };
    const hasRoots = this.dice() < 0.3 && (await this.#looksBy('Gentle tug')) && (await this.button(/^Rooted/).isVisible());
    if (!hasRoots) await this.#looksBy('From above');
    if (roll < 0.4) await this.#tapsDead(dead);
    if (roll < 0.2) return { isFine: false, look: 'look', dead };
    const [alive, rooted] = [10 + Math.floor(this.dice() * 12), Math.floor(this.dice() * 9)];
    await this.#taps(alive);
    if (!hasRoots) return { isFine: false, look: 'look', alive, dead };
    await this.button(/^Rooted/).click();
    await this.#taps(rooted);
    return { isFine: false, look: 'tug', alive, rooted, dead };
  }

  async #looksBy(words: string): Promise<boolean> {
    await this.page.getByRole('group', { name: 'How do you look?' }).getByText(words, { exact: true }).click();
    return true;
  }

  async #tapsDead(dead: Record<string, number>): Promise<void> {
    await this.button(/^Dead/).click();
    for (const cause of new Set([this.draw(...CAUSES), this.draw(...CAUSES)])) {
      dead[cause] = 1 + Math.floor(this.dice() * 2);
      await this.button(new RegExp(`^${cause}`)).click();
      await this.#taps(dead[cause]);
    }
    await this.button(/dead: done$/).click();
  }

  async #taps(n: number): Promise<void> {
    for (const figure of String(n)) await this.button(figure).click();
  }

  /** Tells otherwise what was told on this walk, or takes it back; the one who does it has seen the list of what they told. */
  async changesSome(n: number, day: 'Today' | 'Yesterday'): Promise<void> {
    for (let each = 0; each < n; each += 1) {
      await this.#begins(day);
      if (await this.button('Finish early').isVisible()) await this.button('Finish early').click();
      const changes = this.button('Change it');
      await changes.nth(Math.floor(this.dice() * (await changes.count()))).click();
      await this.#changesOne();
    }
  }

  async #changesOne(): Promise<void> {
    const label = (await this.page.locator('#stop').textContent()) ?? '';
    const before = this.#answers.get(label);
    if (!before) throw new Error(`${this.name} never told anything of ${label} on this walk`);
    const { look, rooted, dead } = before;
    if (before.alive !== undefined) await this.button('Clear').click();
    const isWithdrawn = before.alive !== undefined && rooted === undefined && Object.keys(dead).length === 0 && this.dice() < 0.4;
    if (isWithdrawn) {
      await this.button('Skip').click();
      return this.#isTakenBack(label);
    }
    const alive = 10 + Math.floor(this.dice() * 12);
    await this.#taps(alive);
    await this.button('Next').click();
    await this.#isKept(label, { isFine: false, look, alive, ...(rooted === undefined ? {} : { rooted }), dead });
  }
}
