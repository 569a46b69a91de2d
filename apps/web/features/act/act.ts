import { isLabelCode, keptLabel, looksLikeLabelCode } from '@sprigline/domain';
import type { EntryToSend } from '../../lib/entry-to-send.ts';

export type Stage = 'cutting' | 'liner' | 'potted' | 'planted';
/** What can be done to a batch without a signal. */
export type Act = 'pot' | 'lift' | 'plant' | 'move' | 'call' | 'throwOut' | 'note';

const BY_STAGE: Readonly<Record<Stage, readonly Act[]>> = {
  cutting: ['lift', 'pot', 'plant', 'move', 'call', 'throwOut', 'note'],
  liner: ['pot', 'plant', 'move', 'throwOut', 'note'],
  potted: ['plant', 'move', 'throwOut', 'note'],
  planted: ['move', 'note'],
};
const MOVING: readonly Act[] = ['lift', 'pot', 'plant', 'move'];

/** What fits the stage, the likeliest first. Held plants stay where they are until they are released at the desk. */
export const actsFor = (stage: Stage, isHeld: boolean): readonly Act[] => BY_STAGE[stage].filter((act) => !(isHeld && MOVING.includes(act)));

export type Part = 'n' | 'all' | 'place' | 'rows' | 'positions' | 'container' | 'medium' | 'label' | 'leavesNone' | 'reason' | 'text';

const PARTS: Readonly<Record<Act, readonly Part[]>> = {
  pot: ['n', 'leavesNone', 'place', 'rows', 'container', 'medium', 'label'],
  lift: ['n', 'leavesNone', 'place', 'rows', 'container', 'medium', 'label'],
  plant: ['n', 'leavesNone', 'place', 'positions', 'label'],
  move: ['n', 'all', 'place', 'rows', 'label'],
  call: ['n'],
  throwOut: ['n', 'reason'],
  note: ['text'],
};

/** What is asked, by what is done. */
export const asks = (act: Act, part: Part): boolean => PARTS[act].includes(part);

/** As it is tapped in; blank is not nought. */
export interface Told {
  readonly n?: number | undefined;
  /** The whole batch goes, however many that is. */
  readonly all?: boolean | undefined;
  readonly placeId?: string | undefined;
  /** A batch that stands there and that they join; nothing: they become one of their own. */
  readonly joinId?: string | undefined;
  /** Rows of the tray that they go into. */
  readonly rows?: string | undefined;
  /** On the plot, with commas between them. */
  readonly positions?: string | undefined;
  readonly container?: string | undefined;
  readonly medium?: string | undefined;
  readonly label?: string | undefined;
  readonly leavesNone?: boolean | undefined;
  readonly reason?: string | undefined;
  readonly text?: string | undefined;
}

export type Slip = 'howMany' | 'where' | 'samePlace' | 'why' | 'text' | 'rows' | 'positions' | 'label' | 'labelTaken';

/**
 * What is missing or wrong before it is kept. How many are there is no question of it: what was done was done.
 *
 * @param placeId where the batch stands
 * @param labels those that are on other plants already, as this device knows
 */
export function slipIn(act: Act, told: Told, placeId: string, labels: ReadonlySet<string>): Slip | undefined {
  const isWhole = asks(act, 'all') && told.all === true;
  if (asks(act, 'n') && !isWhole && !((told.n ?? 0) > 0)) return 'howMany';
  if (asks(act, 'place') && told.placeId === undefined) return 'where';
  if (isWhole && told.placeId === placeId) return 'samePlace';
  if (asks(act, 'reason') && blank(told.reason)) return 'why';
  if (asks(act, 'text') && blank(told.text)) return 'text';
  if (isWhole) return undefined;
  if (asks(act, 'positions') && positionsIn(told.positions).length > (told.n ?? 0)) return 'positions';
  // Whom they join has its rows and its label.
  if (told.joinId !== undefined) return undefined;
  if (asks(act, 'rows') && !areRows(told.rows)) return 'rows';
  return asks(act, 'label') ? labelSlip(told.label, labels) : undefined;
}

/** As the contract has it, "3" or "3-5"; blank is not told. */
export const areRows = (rows: string | undefined): boolean => blank(rows) || /^[1-9]\d?(-[1-9]\d?)?$/.test(rows?.trim() ?? '');

/** "r1 c1, r1 c2": each of them. */
const positionsIn = (typed: string | undefined): string[] => (typed ?? '').split(/[,;\n]/).map((one) => one.trim()).filter((one) => one !== '');

/** Of a label that was typed: one of our codes with a wrong character in it, or one that is on something else. Without one nothing is wrong. */
export function labelSlip(label: string | undefined, labels: ReadonlySet<string>): 'label' | 'labelTaken' | undefined {
  if (label === undefined || blank(label)) return undefined;
  const kept = keptLabel(label);
  // First, since old labels may look like one of our codes with a wrong character in it.
  if (labels.has(kept.toUpperCase())) return 'labelTaken';
  return looksLikeLabelCode(label) && !isLabelCode(kept) ? 'label' : undefined;
}

export interface ActIds {
  readonly entryId: string;
  /** Of the batch that it opens, where it opens one. */
  readonly toBatchId: string;
}

/** What holds for every entry of one hour of work. */
export interface When {
  readonly day: string;
  /** Somebody else who did it; nothing for whoever logs. */
  readonly seenBy: string;
  readonly workdayId?: string | undefined;
}

export interface Moment {
  /** Minute of the day, when it is done today. */
  readonly minute?: number | undefined;
  readonly writtenAt: string;
}

/** The entry that an act becomes. The same ids say the same act, however often it is kept. */
export function entryOf(act: Act, batchId: string, told: Told, { entryId, toBatchId }: ActIds, when: When, moment: Moment): EntryToSend {
  return entryAt(entryId, when, moment, sayingOf(act, batchId, told, toBatchId));
}

/** An entry of that hour. */
export function entryAt(id: string, { day, seenBy, workdayId }: When, { minute, writtenAt }: Moment, saying: EntryToSend['saying']): EntryToSend {
  return {
    id, observedOn: day, writtenAt, saying,
    ...(seenBy === '' ? {} : { seenBy }),
    ...(workdayId === undefined ? {} : { workdayId }),
    ...(minute === undefined ? {} : { minute }),
  };
}

const KIND = { lift: 'lifted', pot: 'potted', plant: 'planted' } as const;
export const STAGE_AFTER = { lift: 'liner', pot: 'potted', plant: 'planted' } as const;

function sayingOf(act: Act, batchId: string, told: Told, newBatchId: string): EntryToSend['saying'] {
  const { n = 0, all, placeId = '', joinId, leavesNone, reason = '', text = '' } = told;
  const toBatchId = joinId ?? newBatchId;
  const positions = positionsIn(told.positions);
  const { label, rows, container, medium } = joinId === undefined ? told : {};
  const called = { ...written('label', label && keptLabel(label)), ...written('rows', rows) };
  const anew = { ...called, ...written('container', container), ...written('medium', medium) };
  switch (act) {
    case 'lift': case 'pot':
      return { kind: KIND[act], batchId, n, toBatchId, placeId, ...anew, ...(leavesNone ? { leavesNone } : {}) };
    case 'plant':
      return { kind: 'planted', batchId, n, toBatchId, placeId, ...written('label', anew.label), ...(positions.length > 0 ? { positions } : {}), ...(leavesNone ? { leavesNone } : {}) };
    case 'move':
      return all ? { kind: 'moved', batchId, placeId } : { kind: 'moved', batchId, n, toBatchId, placeId, ...called };
    case 'call':
      return { kind: 'called', batchId, n };
    case 'throwOut':
      return { kind: 'thrownOut', batchId, n, reason: reason.trim() };
    case 'note':
      return { kind: 'noted', batchId, text: text.trim() };
  }
}

const blank = (words: string | undefined): boolean => (words ?? '').trim() === '';
const written = <Name extends string>(name: Name, words: string | undefined): Partial<Record<Name, string>> => (blank(words) ? {} : ({ [name]: words?.trim() } as Record<Name, string>));
