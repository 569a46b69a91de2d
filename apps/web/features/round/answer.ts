import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { newId } from '../../lib/new-id.ts';
import type { Look, Stage, Stop } from './stop.ts';

export type Field = 'alive' | 'rooted' | 'callused' | 'notFound' | 'notLooked';
/** As they are tapped in; blank is not nought. */
export type Numbers = Readonly<Partial<Record<Field, number>>>;
export type Dead = Readonly<Record<string, number>>;

/** What was tapped in for one batch. Kept on the phone until it is in the books. */
export interface Answer {
  readonly batchId: string;
  readonly label: string;
  readonly stage: Stage;
  readonly said: 'seen' | 'fine';
  readonly look: Look;
  readonly numbers: Numbers;
  /** Dead by cause, as the eye sees it. */
  readonly dead: Dead;
  readonly writtenAt: string;
  /** Minute of the day, when it was seen today. */
  readonly minute?: number | undefined;
  /** Ids of the entries that it becomes, made once: sent twice, they are written once. */
  readonly ids: Readonly<Record<string, string>>;
}

/** What is there to fill in, by what the eye can see with that look. */
export function fieldsFor(stage: Stage, look: Look): readonly Field[] {
  if (stage === 'planted') return ['alive', 'notFound', 'notLooked'];
  if (stage !== 'cutting' || look === 'look') return ['alive'];
  return look === 'tug' ? ['alive', 'rooted'] : ['alive', 'rooted', 'callused'];
}

export const deadIn = (dead: Dead): number => Object.values(dead).reduce((sum, n) => sum + n, 0);

export const isBlank = (numbers: Numbers, dead: Dead): boolean => Object.keys(numbers).length === 0 && deadIn(dead) === 0;

/** What is wrong with numbers before anybody else looks at them. */
export function slipIn({ numbers: { alive, rooted = 0, callused = 0, ...others } }: Pick<Answer, 'numbers'>): 'aliveMissing' | 'rootedAboveAlive' | undefined {
  if (alive === undefined) return rooted + callused > 0 || Object.keys(others).length > 0 ? 'aliveMissing' : undefined;
  return rooted + callused > alive ? 'rootedAboveAlive' : undefined;
}

/** Gives each entry that the answer becomes its id, and keeps those that it has. */
export function withIds(answer: Answer): Answer {
  const ids = Object.fromEntries(partsOf(answer).map((part) => [part, answer.ids[part] ?? newId()]));
  return { ...answer, ids: { ...answer.ids, ...ids } };
}

/** Dead without a count are entries of their own, one a cause. */
function partsOf({ said, numbers, dead }: Answer): string[] {
  if (said === 'fine' || numbers.alive !== undefined) return [said];
  return causesIn(dead);
}

const causesIn = (dead: Dead): string[] => Object.keys(dead).filter((cause) => (dead[cause] ?? 0) > 0);

/** Causes are text, in the words of who looked. */
export interface SaidWords {
  readonly causes: Readonly<Record<string, string>>;
}

/** What of the whole round holds for each of its entries. */
export interface RoundHead {
  readonly day: string;
  readonly seenBy: string;
  readonly workdayId?: string | undefined;
}

export function entriesOf(answer: Answer, { day: observedOn, seenBy, workdayId }: RoundHead, words: SaidWords): EntryToSend[] {
  return partsOf(answer).map((part) => ({
    id: answer.ids[part] ?? '',
    observedOn,
    ...(seenBy === '' ? {} : { seenBy }),
    ...(workdayId === undefined ? {} : { workdayId }),
    ...(answer.minute === undefined ? {} : { minute: answer.minute }),
    writtenAt: answer.writtenAt,
    saying: sayingOf(answer, part, words),
  }));
}

function sayingOf({ batchId, stage, look, numbers, dead }: Answer, part: string, words: SaidWords): EntryToSend['saying'] {
  const list = causesIn(dead).map((cause) => ({ n: dead[cause] ?? 0, cause: words.causes[cause] ?? cause, certainty: certaintyOf(cause) }));
  const { alive, rooted, callused, notFound, notLooked } = numbers;
  if (part === 'fine') return { kind: 'noted', batchId, lookedOver: true };
  if (part !== 'seen') return { kind: 'died', batchId, n: dead[part] ?? 0, cause: words.causes[part] ?? part, certainty: certaintyOf(part) };
  if (stage === 'planted') return { kind: 'checked', batchId, alive: alive ?? 0, dead: list, notFound: notFound ?? 0, notLooked: notLooked ?? 0 };
  return {
    kind: 'counted', batchId, alive: alive ?? 0, look, dead: list,
    ...(rooted === undefined ? {} : { rooted }),
    ...(callused === undefined ? {} : { callused }),
  };
}

const certaintyOf = (cause: string) => (cause === 'unclear' ? ('unknown' as const) : ('seen' as const));

export function answerTo(stop: Stop, told: Pick<Answer, 'said' | 'look' | 'numbers' | 'dead' | 'minute'>, before: Answer | undefined): Answer {
  const { batchId, label, stage } = stop;
  return withIds({ batchId, label, stage, ...told, writtenAt: before?.writtenAt ?? new Date().toISOString(), ids: before?.ids ?? {} });
}
