import type { Problem, Written } from '@sprigline/contract';
import { type Ask, type Answered, apiPath } from './ask.ts';
import type { OutboxItem } from './outbox-item.ts';
import { type Heard, letOut, markRefused, markSent, unsent } from './outbox.ts';
import { portions } from './portions.ts';
import type { Store } from './store.ts';

/** Why sending ended. Nothing of what is left is lost: it goes out at the next chance. */
export type Ending =
  | { readonly why: 'done' }
  /** No connection, or a server that cannot answer now; not before so many seconds. */
  | { readonly why: 'unheard'; readonly waitS: number | undefined }
  /** Somebody has to sign in. */
  | { readonly why: 'signedOut' };

interface Sending {
  readonly store: Store;
  readonly ask: Ask;
  readonly now: () => number;
  /** What is younger than that stays here, so that it can be undone without a trace. Milliseconds. */
  readonly holdBackMs: number;
}

/**
 * Sends what is on this device, in the order in which it was logged, as far as it goes. What the
 * server refuses is marked and does not keep the rest back.
 *
 * Safe to break off at any moment, and to run twice at once: ids were made when it was logged.
 */
export async function sendAll(sending: Sending): Promise<Ending> {
  const { store, now, holdBackMs } = sending;
  const waiting = (await unsent(store)).filter(({ refusal, keptAt, isOut }) => refusal === undefined && (isOut || keptAt <= now() - holdBackMs));
  for (const portion of portions(waiting)) {
    const ending = await sendPortion(sending, await letOut(store, portion.map(({ at }) => at)));
    if (ending.why !== 'done') return ending;
  }
  return { why: 'done' };
}

async function sendPortion(sending: Sending, items: readonly OutboxItem[]): Promise<Ending> {
  const [first] = items;
  if (!first) return { why: 'done' };
  let answer: Answered;
  try {
    answer = await sent(sending.ask, first, items);
  } catch {
    return { why: 'unheard', waitS: undefined };
  }
  const { status, waitS } = answer;
  if (status === 401) return { why: 'signedOut' };
  if (status === 408 || status === 429 || status >= 500) return { why: 'unheard', waitS };
  if (status < 300) return heard(sending, items, answer.body);
  return refused(sending, items, problemIn(answer));
}

function sent(ask: Ask, { programme, work }: OutboxItem, items: readonly OutboxItem[]): Promise<Answered> {
  if (work.kind === 'record') return ask(work.path, { method: work.method, json: work.body });
  if (work.kind === 'photo') return ask(work.path, { method: 'PUT', bytes: { type: work.type, content: work.bytes } });
  return ask(apiPath(programme, 'entries'), { method: 'POST', json: { door: 'outbox', entries: items.flatMap(entryOf) } });
}

const entryOf = ({ work, author }: OutboxItem): unknown[] => (work.kind === 'entry' ? [{ ...work.entry, writtenBy: author.personId }] : []);

async function heard({ store, now }: Sending, items: readonly OutboxItem[], body: unknown): Promise<Ending> {
  const [first] = items;
  if (first?.work.kind !== 'entry') {
    await markSent(store, items.map((item) => ({ item, status: 'written', flags: [] })), now());
    return { why: 'done' };
  }
  const byId = new Map(((body as Partial<Written> | undefined)?.entries ?? []).map((entry) => [entry.id, entry]));
  const [taken, not]: [Heard[], { at: number; refusal: Problem }[]] = [[], []];
  for (const item of items) {
    const entry = byId.get(item.id);
    if (entry?.status === 'refused') not.push({ at: item.at, refusal: entry.problem ?? NO_REASON });
    else if (entry) taken.push({ item, status: entry.status, flags: entry.flags });
  }
  await markSent(store, taken, now());
  await markRefused(store, not);
  // An answer that is silent about some is no answer of this server.
  return taken.length + not.length === items.length ? { why: 'done' } : { why: 'unheard', waitS: undefined };
}

/** The request as a whole: the one item it is about is marked; of several, each half is asked for itself. */
async function refused(sending: Sending, items: readonly OutboxItem[], refusal: Problem): Promise<Ending> {
  if (items.length <= 1 || OF_ALL.has(refusal.status)) {
    await markRefused(sending.store, items.map(({ at }) => ({ at, refusal })));
    return { why: 'done' };
  }
  const half = Math.ceil(items.length / 2);
  const first = await sendPortion(sending, items.slice(0, half));
  return first.why === 'done' ? sendPortion(sending, items.slice(half)) : first;
}

/** No member, or no such programme: no half of them would fare better. */
const OF_ALL = new Set([403, 404]);

const NO_REASON: Problem = { type: 'about:blank', title: 'No reason was given', status: 422 };

const problemIn = ({ body, status }: Answered): Problem => (typeof body === 'object' && body !== null && 'title' in body ? (body as Problem) : { type: 'about:blank', title: `The server answered ${status}`, status });
