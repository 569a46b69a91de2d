import { type APIRequestContext, expect } from '@playwright/test';
import { HARROWDALE } from '../../e2e/product/people.ts';
import { read, type Who } from './bench-of-forty.ts';
import { lineOf, type Said } from './told.ts';

/** As it lay in the outbox of a phone. */
export interface Kept {
  readonly id: string;
  readonly keptAt: number;
  readonly author: { readonly personId: string };
  readonly work: { readonly entry: { readonly observedOn: string; readonly saying: Said } };
}

export interface Brought {
  readonly who: Who;
  readonly kept: Kept;
}

/** What has gone out no longer says when it was told; its id does, by the standard (RFC 9562, version 7). */
export const asItWasKept = (sent: Kept): Kept => ({ ...sent, keptAt: Number.parseInt(sent.id.replace('-', '').slice(0, 12), 16) });

/** In the order in which it happened: day by day, and within a day as it was told; then what was told otherwise later, in that order. */
export const asItHappened = (all: readonly Brought[]): Brought[] =>
  all.toSorted((one, other) => dayOf(one.kept).localeCompare(dayOf(other.kept)) || one.kept.keptAt - other.kept.keptAt);

const dayOf = ({ work: { entry } }: Kept): string => (['withdrawn', 'replaced'].includes(entry.saying.kind) ? 'afterwards' : entry.observedOn);

/** Sends one after the other, each by itself. @returns what became of each */
export async function sentOneByOne(desks: Readonly<Record<Who, APIRequestContext>>, all: readonly Brought[]): Promise<string[]> {
  const became: string[] = [];
  for (const { who, kept } of all) became.push(await sent(desks[who], kept));
  return became;
}

async function sent(desk: APIRequestContext, { work, author }: Kept): Promise<string> {
  const answer = await desk.post(`/api/v1${HARROWDALE}/entries`, { data: { door: 'outbox', entries: [{ ...work.entry, writtenBy: author.personId }] } });
  expect(answer.ok(), await answer.text()).toBe(true);
  const { entries } = (await answer.json()) as { entries: { status: string }[] };
  return entries[0]?.status ?? 'nothing was said';
}

export interface BatchBooks {
  readonly id: string;
  readonly label: string | null;
  readonly history: readonly { readonly id: string; readonly door: string; readonly said: Said; readonly now: { readonly said: Said } | null; readonly corrections: readonly { readonly id: string }[] }[];
}

/** Everything that the API says of these batches, but for when it arrived. */
export async function booksOf(desk: APIRequestContext, batchIds: readonly string[]): Promise<Map<string, BatchBooks>> {
  const books = new Map<string, BatchBooks>();
  for (const id of batchIds) books.set(id, withoutArrival(await read<BatchBooks>(desk, `batches/${id}`)));
  return books;
}

/** When something arrived, and by that until when its author may mend it. */
const ARRIVAL: readonly string[] = ['receivedAt', 'mayMend'];

const withoutArrival = <T>(answer: T): T => JSON.parse(JSON.stringify(answer, (key, value: unknown) => (ARRIVAL.includes(key) ? undefined : key === 'flags' ? inOrder(value) : value))) as T;

/** Flags of one entry are told in no order of their own. */
const inOrder = (flags: unknown): unknown => (flags as { readonly code: string }[]).toSorted((one, other) => one.code.localeCompare(other.code));

/** Batches that something was told of, those that it opened included. */
export const touchedBy = (all: readonly Brought[]): string[] => [
  ...new Set(all.flatMap(({ kept: { work } }) => [work.entry.saying['batchId'], work.entry.saying['toBatchId']]).filter((id): id is string => typeof id === 'string')),
];

/** What was told from phones and holds, a line each, as those who told it remember it. */
export function linesIn(books: ReadonlyMap<string, BatchBooks>): string[] {
  const entries = new Map([...books.values()].flatMap(({ history }) => history).map((entry) => [entry.id, entry]));
  const holding = [...entries.values()].filter(({ door }) => door === 'outbox').flatMap(({ now }) => (now ? [now.said] : []));
  return holding.map((said) => lineOf(books.get(String(said['batchId']))?.label ?? '?', said));
}
