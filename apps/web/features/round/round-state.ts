import { type Answer, answerTo } from './answer.ts';
import type { Draft } from './draft.ts';
import type { KeptEntries } from '../../lib/phone/kept-entries.ts';
import type { PlaceAnswer } from './place-answer.ts';
import type { Look, Stop } from './stop.ts';

/** Where one is: before the walk, at the place itself, at a batch (0 is the first), at the whole tray that it stands in, or at what was told. */
export type Where = 'start' | 'place' | 'told' | number | { readonly trayAt: number };

export interface RoundState {
  readonly where: Where;
  readonly draft: Draft;
  /** Whether the phone had something of this round from before. */
  readonly isRestored: boolean;
}

export type RoundStep =
  | { readonly step: 'restore'; readonly draft: Draft }
  | { readonly step: 'begin'; readonly day: string; readonly seenBy: string; readonly workdayId: string | undefined }
  | { readonly step: 'go'; readonly where: Where }
  | { readonly step: 'answer'; readonly answer: Answer; readonly where: Where }
  | { readonly step: 'forget'; readonly batchId: string }
  | { readonly step: 'place'; readonly place: PlaceAnswer | undefined }
  | { readonly step: 'look'; readonly look: Look }
  | { readonly step: 'kept'; readonly of: string; readonly kept: KeptEntries }
  | { readonly step: 'anew'; readonly day: string };

/** A round of which nothing has been told. */
export const blankDraft = (day: string): Draft => ({ day, seenBy: '', look: 'look', answers: {}, kept: {} });

export function roundAfter(state: RoundState, next: RoundStep): RoundState {
  const { draft } = state;
  switch (next.step) {
    case 'restore':
      return { ...state, draft: next.draft, isRestored: true };
    case 'begin':
      return { ...state, draft: { ...draft, day: next.day, seenBy: next.seenBy, workdayId: next.workdayId }, where: 0 };
    case 'go':
      return { ...state, where: next.where };
    case 'place':
      return { ...state, draft: { ...draft, place: next.place } };
    case 'look':
      return { ...state, draft: { ...draft, look: next.look } };
    case 'answer':
      return { ...state, where: next.where, draft: { ...draft, answers: { ...draft.answers, [next.answer.batchId]: next.answer } } };
    case 'forget':
      return { ...state, draft: { ...draft, answers: without(draft.answers, next.batchId) } };
    case 'kept':
      return { ...state, draft: { ...draft, kept: { ...draft.kept, [next.of]: next.kept } } };
    case 'anew':
      return { where: 'start', draft: blankDraft(next.day), isRestored: false };
  }
}

function without<T>(all: Readonly<Record<string, T>>, id: string): Record<string, T> {
  const { [id]: _, ...others } = all;
  return others;
}

export type Told = Parameters<typeof answerTo>[1];

/** What was told of a batch, with the ids that it keeps, whatever it comes to say. */
export const answered = ({ answers }: Draft, stop: Stop, told: Told): Answer => answerTo(stop, told, answers[stop.batchId]);
