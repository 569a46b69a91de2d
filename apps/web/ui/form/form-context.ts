'use client';

import type { Problem } from '@sprigline/contract';
import { createContext, useContext, useId } from 'react';

export interface FormTalk {
  readonly turn: number;
  readonly problem: Problem | undefined;
  /** The problem in words for a person. */
  readonly words: string | undefined;
  readonly values: Readonly<Record<string, string>>;
  /** What each field is called, by its name. Fields and the summary of errors both read it here. */
  readonly labels: Readonly<Record<string, string>>;
  /** Sentences beside the fields, by name. */
  readonly errors: Readonly<Record<string, string>>;
}

export const FormContext = createContext<FormTalk>({ turn: 0, problem: undefined, words: undefined, values: {}, labels: {}, errors: {} });

interface FieldTalk {
  readonly label: string;
  readonly error: string | undefined;
  readonly errorId: string;
  readonly hintId: string;
  readonly typed: string | undefined;
  /** Changes with each sending: React empties a form after it, so its fields are made anew with what was typed. */
  readonly key: string;
}

export function useField(name: string): FieldTalk {
  const form = useContext(FormContext);
  const id = useId();
  return {
    label: form.labels[name] ?? name,
    error: form.errors[name],
    errorId: `${id}-error`,
    hintId: `${id}-hint`,
    typed: form.values[name],
    key: `${name}-${form.turn}`,
  };
}

/** Which texts describe a field, for `aria-describedby`; nothing when there are none. */
export function describedBy({ error, errorId, hintId }: FieldTalk, hint: unknown): string | undefined {
  return [hint ? hintId : '', error ? errorId : ''].filter(Boolean).join(' ') || undefined;
}
