'use client';

import type { WrittenEntry } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { useCallback, useEffect, useRef, useState } from 'react';
import { type Answer, entriesOf } from './answer.ts';
import { askBooks } from './ask-books.action.ts';
import type { Heard } from './heard.ts';
import { entriesOfPlace, type PlaceAnswer } from './place-answer.ts';
import type { RoundProps } from './round-screen.tsx';
import type { RoundState, RoundStep } from './round-state.ts';
import { saveRound } from './save-round.action.ts';

/** What became of one batch's answer. */
export interface Saved {
  readonly answer: Answer;
  readonly status: WrittenEntry['status'];
  readonly flags: WrittenEntry['flags'];
}

export interface Books {
  /** What the books made of the answers, as last heard. */
  readonly heard: Heard | undefined;
  /** Why the request as a whole was not taken. */
  readonly problem: string | undefined;
  readonly isBusy: boolean;
  /** No answer came: no connection, or the server is down. */
  readonly isUnheard: boolean;
  readonly wasSaving: boolean;
  readonly written: readonly Saved[];
  /** How the place was found, once that is in the books. */
  readonly placeWritten: PlaceAnswer | undefined;
  readonly confirmed: ReadonlySet<string>;
  readonly save: () => void;
  readonly confirm: (answer: Answer) => void;
}

type Hearing = Pick<Books, 'heard' | 'problem' | 'isBusy' | 'isUnheard' | 'wasSaving'>;
const NOTHING: Hearing = { heard: undefined, problem: undefined, isBusy: false, isUnheard: false, wasSaving: false };

/** Asks the books what they make of the answers, and saves them. */
export function useBooks({ programme, placeId, taps, state: { draft }, step }: RoundProps & { state: RoundState; step: (next: RoundStep) => void }): Books {
  const { causes } = useMessages().entries;
  const [hearing, hear] = useState<Hearing>(NOTHING);
  const [written, setWritten] = useState<readonly Saved[]>([]);
  const [placeWritten, setPlaceWritten] = useState<PlaceAnswer>();
  const [confirmed, setConfirmed] = useState<ReadonlySet<string>>(new Set());

  const answers = Object.values(draft.answers);
  const ofPlace = entriesOfPlace(placeId, draft.place, taps, draft);
  const entries = [...ofPlace, ...answers.flatMap((answer) => entriesOf(answer, draft, { causes }))];
  const confirm = answers.filter(({ batchId }) => confirmed.has(batchId)).flatMap(({ ids }) => Object.values(ids));
  const asked = JSON.stringify([entries, confirm]);

  // Only the last question is listened to: a save does not wait for the look before it.
  const question = useRef(0);

  const ask = useCallback(async () => {
    const [toAsk, sure] = JSON.parse(asked) as [typeof entries, string[]];
    if (toAsk.length === 0) return hear(NOTHING);
    const mine = ++question.current;
    hear((before) => ({ ...before, isBusy: true, isUnheard: false, problem: undefined, wasSaving: false }));
    try {
      const answer = await askBooks(programme, toAsk, sure, Date.now());
      if (mine === question.current) hear('refused' in answer ? { ...NOTHING, problem: answer.refused } : { ...NOTHING, heard: answer });
    } catch {
      if (mine === question.current) hear({ ...NOTHING, isUnheard: true });
    }
  }, [asked, programme]);

  useEffect(() => void ask(), [ask]);

  async function save() {
    question.current += 1;
    hear((before) => ({ ...before, isBusy: true, isUnheard: false, problem: undefined, wasSaving: true }));
    try {
      const answer = await saveRound(programme, entries, confirm, Date.now());
      if ('refused' in answer) return hear({ ...NOTHING, problem: answer.refused });
      const byId = new Map(answer.entries.map((entry) => [entry.id, entry]));
      const saved = answers.flatMap((one) => savedAs(one, byId) ?? []);
      const isPlaceWritten = ofPlace.length > 0 && ofPlace.every(({ id }) => byId.has(id) && byId.get(id)?.status !== 'refused');
      if (isPlaceWritten) setPlaceWritten(draft.place);
      setWritten((before) => [...before, ...saved]);
      hear({ ...NOTHING, heard: answer });
      step({ step: 'written', batchIds: saved.map(({ answer: { batchId } }) => batchId), isPlaceWritten });
    } catch {
      // Nothing is forgotten: the draft stays on the phone until an answer says otherwise.
      hear((before) => ({ ...before, isBusy: false, isUnheard: true, wasSaving: true }));
    }
  }

  return { ...hearing, written, placeWritten, confirmed, save: () => void save(), confirm: ({ batchId }) => setConfirmed(new Set([...confirmed, batchId])) };
}

/** An answer is in the books once all its entries are. */
function savedAs(answer: Answer, byId: ReadonlyMap<string, WrittenEntry>): Saved | undefined {
  const own = Object.values(answer.ids).flatMap((id) => byId.get(id) ?? []);
  if (own.length === 0 || own.some(({ status }) => status === 'refused')) return undefined;
  const status = own.every((entry) => entry.status === 'already') ? 'already' : own.some((entry) => entry.status === 'waiting') ? 'waiting' : 'written';
  return { answer, status, flags: own.flatMap(({ flags }) => flags) };
}
