import type { Answer } from './answer.ts';
import { type Celled, type Extras, type Mark, type Marks, told } from './grid-cells.ts';
import { asksRoots, rootsFrom } from './grid-roots.ts';

/** What a finger has said of a tray. */
export interface Tapped {
  readonly marks: Marks;
  readonly extras: Extras;
}

/**
 * What a tray's grid shows when it is opened: what was tapped in there, and, of a batch that was told otherwise since, what was told.
 * Which plants those were nobody said, so they stand at the end.
 */
export function tappedBefore(celled: readonly Celled[], kept: Tapped | undefined, answers: Readonly<Record<string, Answer>>): Tapped {
  const parts = celled.map((one) => {
    const { batchId } = one.stop;
    const [answer, here] = [answers[batchId], kept && keptOf(one, kept)];
    return here && (answer === undefined || saysSo(one, here, answer)) ? here : fromAnswer(one, answer);
  });
  return { marks: Object.assign({}, ...parts.map(({ marks }) => marks)) as Marks, extras: Object.assign({}, ...parts.map(({ extras }) => extras)) as Extras };
}

/** Of one batch, without cells that it has no more. */
function keptOf({ stop: { batchId }, n }: Celled, { marks, extras }: Tapped): Tapped {
  const extra = extras[batchId] ?? 0;
  const own = Array.from({ length: n + extra }, (_, nth) => `${batchId}/${nth}`).flatMap((key) => (marks[key] === undefined ? [] : [[key, marks[key]] as const]));
  return { marks: Object.fromEntries(own), extras: { [batchId]: extra } };
}

function saysSo(one: Celled, { marks, extras }: Tapped, { said, look, numbers, dead }: Answer): boolean {
  const now = told(one, marks, extras, { isAll: numbers.alive !== undefined, look });
  return said === 'seen' && (['alive', 'rooted', 'callused'] as const).every((field) => now.numbers[field] === numbers[field]) && [...Object.keys(dead), ...Object.keys(now.dead)].every((cause) => (now.dead[cause] ?? 0) === (dead[cause] ?? 0));
}

function fromAnswer({ stop, n }: Celled, answer: Answer | undefined): Tapped {
  if (answer?.said !== 'seen') return { marks: {}, extras: {} };
  const { batchId } = stop;
  const dead = Object.entries(answer.dead).flatMap(([cause, many]) => Array.from({ length: many }, () => cause as Mark));
  const { alive = n - dead.length } = answer.numbers;
  const extra = Math.max(0, alive + dead.length - n);
  const marks = [...dead, ...Array.from({ length: Math.max(0, n - alive - dead.length) }, () => 'gone' as const)];
  const living = Array.from({ length: n + extra - marks.length }, (_, nth) => `${batchId}/${nth}`);
  const lost = Object.fromEntries(marks.map((mark, at) => [`${batchId}/${living.length + at}`, mark]));
  return { marks: { ...(asksRoots(stop, answer.look) ? rootsFrom(answer.numbers, living) : {}), ...lost }, extras: { [batchId]: extra } };
}

/** So long it is what somebody is just looking at. Milliseconds. */
const KEPT_MS = 4 * 60 * 60 * 1000;

export function readTapped(storage: Pick<Storage, 'getItem'>, key: string, now: number): Tapped | undefined {
  try {
    const { at, marks, extras } = JSON.parse(storage.getItem(key) ?? '{}') as Partial<Tapped> & { readonly at?: number };
    return at !== undefined && at <= now && now - at < KEPT_MS && marks && extras ? { marks, extras } : undefined;
  } catch {
    return undefined;
  }
}

export function keepTapped(storage: Pick<Storage, 'setItem'>, key: string, tapped: Tapped, now: number): void {
  try {
    storage.setItem(key, JSON.stringify({ ...tapped, at: now }));
  } catch {
    // Full: it is on the screen, as it was before.
  }
}
