'use client';

import { useMessages, useTranslations } from 'next-intl';
import { useEffect, useReducer, useState } from 'react';
import { draftKey } from '../../lib/round-drafts.ts';
import { type Answer, entriesOf } from './answer.ts';
import { keepDraft, readDraft } from './draft.ts';
import { keepEntries } from '../../lib/phone/keep-entries.ts';
import { entriesOfPlace } from './place-answer.ts';
import type { RoundProps } from './round-screen.tsx';
import { answered, blankDraft, type RoundState, roundAfter, type RoundStep, type Told, type Where } from './round-state.ts';
import type { Stop } from './stop.ts';

/** The last thing told: it is being kept, is kept on this phone, or could not be. */
export interface Keeping {
  readonly answer: Answer | undefined;
  readonly state: 'busy' | 'kept' | 'undone' | 'failed';
}

export interface Walk {
  readonly state: RoundState;
  readonly step: (next: RoundStep) => void;
  readonly keeping: Keeping | undefined;
  /** Tells of a batch, and goes on while it is being kept. */
  readonly tell: (stop: Stop, told: Told, where: Where) => void;
  /** Takes back what was told of a batch. */
  readonly undo: (answer: Answer) => void;
  readonly tellPlace: (where: Where) => void;
}

/** A round in which everything is kept on the phone the moment it is told. */
export function useRound({ programme, placeId, placeName, personId, today, taps, stops, batchId, workdays }: RoundProps): Walk {
  const key = draftKey(programme, placeId, personId);
  const [state, step] = useReducer(roundAfter, { where: 'start', draft: blankDraft(today), isRestored: false });
  const [isRead, setRead] = useState(false);
  const [keeping, setKeeping] = useState<Keeping>();
  const { causes } = useMessages().entries;
  const t = useTranslations('round');
  const { draft } = state;

  // After the first picture, which is drawn without knowing what is on the phone.
  useEffect(() => {
    const kept = readDraft(key);
    if (kept) step({ step: 'restore', draft: kept });
    setRead(true);
    // One that was scanned, at once; never into a walk of another day.
    const at = stops.findIndex((stop) => stop.batchId === batchId);
    if (at === -1 || (kept && kept.day !== today)) return;
    if (!kept) step({ step: 'begin', day: today, seenBy: '', workdayId: workdays.choices.find(({ value }) => value === workdays.remembered)?.value });
    step({ step: 'go', where: at });
  }, [key]);

  useEffect(() => {
    if (isRead) keepDraft(key, draft);
  }, [key, isRead, draft]);

  async function keep(of: string, about: string, entries: ReturnType<typeof entriesOf>, answer: Answer | undefined, done: 'kept' | 'undone'): Promise<void> {
    setKeeping({ answer, state: 'busy' });
    try {
      step({ step: 'kept', of, kept: await keepEntries({ programme, about, reason: t('changedReason') }, entries, draft.kept[of]) });
      setKeeping({ answer, state: done });
      // Loaded at the first batch: no walk waits for a sound.
      void import('../../lib/chime.ts').then(({ chime }) => chime(done), () => undefined);
    } catch {
      // Full, or switched off: it comes back to the screen, since it is nowhere else.
      setKeeping({ answer, state: 'failed' });
      step(answer ? { step: 'answer', answer, where: state.where } : { step: 'go', where: state.where });
    }
  }

  function tell(stop: Stop, told: Told, where: Where): void {
    const answer = answered(draft, stop, told);
    step({ step: 'answer', answer, where });
    void keep(stop.batchId, answer.label, entriesOf(answer, draft, { causes }), answer, 'kept');
  }

  function undo(answer: Answer): void {
    step({ step: 'forget', batchId: answer.batchId });
    void keep(answer.batchId, answer.label, [], answer, 'undone');
  }

  function tellPlace(where: Where): void {
    step({ step: 'go', where });
    if (draft.place || draft.kept[placeId]) void keep(placeId, placeName, entriesOfPlace(placeId, draft.place, taps, draft), undefined, 'kept');
  }

  return { state, step, keeping, tell, undo, tellPlace };
}
