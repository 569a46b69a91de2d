import type { Problem } from '@sprigline/contract';

/** What became of a line that was sent. */
export interface LineState {
  readonly words: string;
  /** May be taken as it stands on the paper. */
  readonly mayConfirm: boolean;
}

export interface TypingState {
  readonly turn: number;
  readonly values: Readonly<Record<string, string>>;
  /** Lines that were not taken, by printed number. */
  readonly refused: Readonly<Record<number, LineState>>;
  /** How many are in the books now; nothing before the first sending. */
  readonly taken?: number;
  readonly problem?: Problem;
  readonly words?: string;
}

export const NOTHING_SENT: TypingState = { turn: 0, values: {}, refused: {} };
