'use client';

import { useEffect, useReducer, useState } from 'react';
import { draftKey } from '../../lib/round-drafts.ts';
import { keepDraft, readDraft } from './draft.ts';
import { type RoundState, roundAfter, type RoundStep } from './round-state.ts';

export interface WhoAndWhere {
  readonly programme: string;
  readonly placeId: string;
  readonly personId: string;
  readonly today: string;
}

/** A round whose every tap is kept on the phone. */
export function useRound({ programme, placeId, personId, today }: WhoAndWhere): { state: RoundState; step: (next: RoundStep) => void; isKept: boolean } {
  const key = draftKey(programme, placeId, personId);
  const [state, step] = useReducer(roundAfter, { where: 'start', draft: { day: today, seenBy: '', look: 'look', answers: {} }, isRestored: false });
  const [isRead, setRead] = useState(false);
  const [isKept, setKept] = useState(true);

  // After the first picture, which the server drew without knowing what is on the phone.
  useEffect(() => {
    const kept = readDraft(key);
    if (kept) step({ step: 'restore', draft: kept });
    setRead(true);
  }, [key]);

  useEffect(() => {
    if (isRead) setKept(keepDraft(key, state.draft));
  }, [key, isRead, state.draft]);

  return { state, step, isKept };
}
