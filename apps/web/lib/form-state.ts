import type { Problem } from '@sprigline/contract';

/** What a form knows about its last sending. */
export interface FormState {
  /** Counts sendings, so that fields show what was typed and the summary takes the focus again. */
  readonly turn: number;
  readonly problem?: Problem;
  /** The problem in words for a person. */
  readonly words?: string;
  /** What was typed, by field, so that nothing has to be typed twice. Never a password. */
  readonly values: Readonly<Record<string, string>>;
  readonly isDone?: boolean;
  /** Something made by the action and shown once, such as an invitation's link. */
  readonly made?: string;
  /** Whom it is for: the form is blank again by then. */
  readonly madeFor?: string;
}

export type FormAction = (before: FormState, form: FormData) => Promise<FormState>;

export const UNTOUCHED: FormState = { turn: 0, values: {} };
