import { testApi, type TestApi } from '../support/api.ts';
import { type Member, member, newId } from '../support/people.ts';
import { PlantList } from './plant-list.ts';
import type { Figures } from './reports.ts';

export type Saying = Record<string, unknown> & { readonly kind: string };

export interface Written {
  readonly id: string;
  readonly status: string;
  readonly flags: readonly { readonly code: string; readonly batchId: string; readonly entryId: string }[];
  readonly problem?: { readonly type: string };
}

/** An entry on its way. */
export interface Sent {
  readonly observedOn: string;
  readonly saying: Saying;
}

interface Round {
  readonly at: string;
  readonly who: Member;
  readonly entries: readonly Sent[];
}

/**
 * The year as it is told and as it is done: a clock that the script sets, people, what each of them was
 * answered, and the script's own books beside those of the product.
 */
export class Diary {
  readonly list = new PlantList();
  /** Flags that must stand at the end, as `code batch`. */
  readonly flags: string[] = [];
  /** Everything that was answered to people who may not see exact places. */
  readonly answered: string[] = [];
  /** What was told on a day, beside what the script makes of it on that day. */
  readonly told: { readonly what: string; readonly told: unknown; readonly own: unknown }[] = [];
  /** The last day on which a batch was counted, of what has arrived. */
  readonly lastLook = new Map<string, string>();
  /** The last day on which it was tugged or lifted, of what has arrived. */
  readonly lastTug = new Map<string, string>();
  /** What reports must say as of a day. */
  readonly figures: Figures[] = [];
  now = new Date('2025-10-01T08:00:00Z');
  /** Rounds that lie on somebody's phone still. */
  #onPhones: Round[] = [];

  constructor(readonly api: TestApi, readonly coordinator: Member, readonly volunteers: readonly Member[]) {}

  /** @param day such as 2025-10-04; nothing that was told for an earlier day is told later */
  on(day: string, time = '12:00'): this {
    this.now = new Date(`${day}T${time}:00Z`);
    return this;
  }

  get today(): string {
    return this.now.toISOString().slice(0, 10);
  }

  volunteer(at: number): Member {
    const who = this.volunteers[at % this.volunteers.length];
    if (!who) throw new Error('nobody came');
    return who;
  }

  entry = (saying: Saying, more: Record<string, unknown> = {}) => ({ id: newId(), observedOn: this.today, writtenAt: this.now.toISOString(), saying, ...more });

  async ask(method: 'GET' | 'POST' | 'PUT', path: string, payload?: object, who: Member = this.coordinator, more: Record<string, string> = {}) {
    const url = path.startsWith('/') ? path : `/api/v1/programmes/harrowdale/${path}`;
    const answer = await this.api.app.inject({ method, url, headers: { ...who.headers, ...more }, ...(payload && { payload }) });
    if (who !== this.coordinator) this.answered.push(`${method} ${url}\n${JSON.stringify(answer.headers)}\n${answer.body}`);
    return answer;
  }

  /** Reads, or changes what was read: as it is now, no version in between. */
  async get<T>(path: string, who: Member = this.coordinator): Promise<T> {
    const answer = await this.ask('GET', path, undefined, who);
    if (answer.statusCode !== 200) throw new Error(`GET ${path} answered ${answer.statusCode}: ${answer.body}`);
    return answer.json<T>();
  }

  async put(path: string, payload: object, versionOf: string): Promise<void> {
    const seen = await this.ask('GET', versionOf);
    const answer = await this.ask('PUT', path, payload, this.coordinator, { 'if-match': String(seen.headers['etag']) });
    if (answer.statusCode !== 200) throw new Error(`PUT ${path} answered ${answer.statusCode}: ${answer.body}`);
  }

  /** Both are compared at the end, so that one difference hides no other. */
  compare(what: string, told: unknown, own: unknown): void {
    this.told.push({ what: `${this.today}: ${what}`, told, own });
  }

  #sawIn(entries: readonly Sent[]): void {
    for (const { observedOn, saying: { kind, batchId, look } } of entries) {
      if (typeof batchId !== 'string' || !['counted', 'stuck'].includes(kind)) continue;
      for (const days of look === 'tug' || look === 'lifted' ? [this.lastLook, this.lastTug] : [this.lastLook]) {
        const before = days.get(batchId) ?? '';
        days.set(batchId, before > observedOn ? before : observedOn);
      }
    }
  }

  /** Makes a record. */
  async make<T extends { id: string }>(path: string, content: object): Promise<T> {
    const answer = await this.ask('POST', path, { id: newId(), ...content });
    if (answer.statusCode !== 201) throw new Error(`POST ${path} answered ${answer.statusCode}: ${answer.body}`);
    return answer.json<T>();
  }

  /** At the desk: every entry must be written. */
  async write(sayings: readonly Saying[], more: Record<string, unknown> = {}, options: Record<string, unknown> = {}): Promise<readonly Written[]> {
    const entries = sayings.map((saying, at) => this.entry(saying, { line: at + 1, ...more }));
    return this.send(this.coordinator, entries, { door: 'desk', ...options });
  }

  async send(who: Member, entries: readonly Sent[], options: Record<string, unknown>, mustBe: readonly string[] = ['written']): Promise<readonly Written[]> {
    const answer = await this.ask('POST', 'entries', { entries, ...options }, who);
    if (answer.statusCode !== 200) throw new Error(`${this.today}: entries were answered ${answer.statusCode}: ${answer.body}`);
    const { entries: items } = answer.json<{ entries: Written[] }>();
    const odd = items.find(({ status }) => !mustBe.includes(status));
    if (odd) throw new Error(`${this.today}: an entry is ${odd.status}: ${JSON.stringify(odd)}`);
    this.#sawIn(entries);
    return items;
  }

  /** Kept on the phone until that day. */
  keepOnPhone(who: Member, entries: readonly Sent[], at: string): void {
    this.#onPhones.push({ at, who, entries });
  }

  /** Phones that find a signal by now send what they hold, the last one first, and send it again when no answer came. */
  async phonesFindSignal(): Promise<void> {
    const due = this.#onPhones.filter(({ at }) => at <= this.today).reverse();
    this.#onPhones = this.#onPhones.filter(({ at }) => at > this.today);
    for (const [index, { who, entries }] of due.entries()) {
      await this.send(who, entries, { door: 'outbox' }, ['written', 'waiting']);
      if (index % 3 === 0) await this.send(who, entries, { door: 'outbox' }, ['already', 'waiting']);
    }
  }

  mustFlag(code: string, batch: string): void {
    this.flags.push(`${code} ${batch}`);
  }
}

/** A programme with a coordinator and twelve volunteers who may not see exact places. */
export async function beginDiary(): Promise<Diary> {
  const clock: { diary?: Diary } = {};
  const api = await testApi({ presentTime: () => clock.diary?.now ?? new Date('2025-10-01T08:00:00Z'), requestsPerMinute: 0, log: 'info' });
  const coordinator = await member(api, 'coordinator', 'harrowdale', { seesExact: true });
  const volunteers: Member[] = [];
  for (let at = 0; at < 12; at += 1) volunteers.push(await member(api, 'volunteer'));
  clock.diary = new Diary(api, coordinator, volunteers);
  return clock.diary;
}
