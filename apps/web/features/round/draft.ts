import type { Answer } from './answer.ts';
import type { KeptEntries } from '../../lib/phone/kept-entries.ts';
import type { PlaceAnswer } from './place-answer.ts';
import type { Look } from './stop.ts';

/** A round under way: where one is in it. What was told lies in the outbox as well, as soon as it was told. */
export interface Draft {
  readonly day: string;
  readonly seenBy: string;
  /** The workday that it is part of; nothing where none was chosen. */
  readonly workdayId?: string | undefined;
  readonly look: Look;
  /** How the place itself was found; nothing while nobody tapped. */
  readonly place?: PlaceAnswer | undefined;
  /** By batch. */
  readonly answers: Readonly<Record<string, Answer>>;
  /** What was kept of the answers, by batch, and of the place by its id. */
  readonly kept: Readonly<Record<string, KeptEntries>>;
}

export function readDraft(key: string): Draft | undefined {
  const kept = window.localStorage.getItem(key);
  if (kept === null) return undefined;
  try {
    // Written by keepDraft under a key that names its version.
    return JSON.parse(kept) as Draft;
  } catch {
    return undefined;
  }
}

/** @returns whether the phone could keep it: storage may be full or switched off */
export function keepDraft(key: string, draft: Draft): boolean {
  try {
    if (Object.keys(draft.answers).length === 0 && !draft.place) window.localStorage.removeItem(key);
    else window.localStorage.setItem(key, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}
