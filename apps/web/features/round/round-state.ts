import { type Answer, answerTo } from './answer.ts';
import type { Draft } from './draft.ts';
import type { PlaceAnswer } from './place-answer.ts';
import type { Look, Stop } from './stop.ts';

/** Where one is: before the walk, at the place itself, at a batch (0 is the first), at the sums, or after saving. */
export type Where = 'start' | 'place' | 'sums' | number;

export interface RoundState {
  readonly where: Where;
  readonly draft: Draft;
  /** Whether there was something on the phone from before. */
  readonly isRestored: boolean;
}

export type RoundStep =
  | { readonly step: 'restore'; readonly draft: Draft }
  | { readonly step: 'begin'; readonly day: string; readonly seenBy: string; readonly workdayId: string | undefined }
  | { readonly step: 'go'; readonly where: Where }
  | { readonly step: 'answer'; readonly stop: Stop; readonly told: Parameters<typeof answerTo>[1]; readonly where: Where }
  | { readonly step: 'skip'; readonly stop: Stop; readonly where: Where }
  | { readonly step: 'place'; readonly place: PlaceAnswer | undefined }
  | { readonly step: 'look'; readonly look: Look }
  | { readonly step: 'written'; readonly batchIds: readonly string[]; readonly isPlaceWritten: boolean };

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
    case 'answer': {
      const answer = answerTo(next.stop, next.told, draft.answers[next.stop.batchId]);
      return { ...state, where: next.where, draft: { ...draft, answers: { ...draft.answers, [answer.batchId]: answer } } };
    }
    case 'skip':
      return { ...state, where: next.where, draft: { ...draft, answers: without(draft.answers, [next.stop.batchId]) } };
    case 'written':
      return { ...state, draft: { ...draft, place: next.isPlaceWritten ? undefined : draft.place, answers: without(draft.answers, next.batchIds) } };
  }
}

function without(answers: Readonly<Record<string, Answer>>, batchIds: readonly string[]): Record<string, Answer> {
  return Object.fromEntries(Object.entries(answers).filter(([id]) => !batchIds.includes(id)));
}
