import { type FormEvent, useId, useRef } from 'react';
import { buttonClass } from '../button-class.ts';
import { INPUT } from '../form/input-class.ts';
import type { ScannerWords } from './scanner-words.ts';

interface CodeFieldProps {
  readonly words: ScannerWords;
  readonly onTyped: (text: string) => void;
  readonly action: string | undefined;
}

/** Always there: a label that no camera reads can still be read by a person. A hand scanner may type into it as well. */
export function CodeField({ words, onTyped, action }: CodeFieldProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);

  function send(event: FormEvent): void {
    event.preventDefault();
    const typed = input.current?.value ?? '';
    if (typed.trim() === '') return input.current?.focus();
    onTyped(typed);
    // The next one is typed over it, and the last one can still be read.
    input.current?.select();
  }

  return (
    <form method="get" action={action} onSubmit={send}>
      <label htmlFor={id} className="font-semibold">{words.typed}</label>
      <p id={`${id}-hint`} className="text-sm text-ink-soft">{words.typedHint}</p>
      <div className="mt-1 flex gap-2">
        <input ref={input} id={id} name="code" required autoComplete="off" autoCapitalize="characters" autoCorrect="off" spellCheck={false} enterKeyHint="go" aria-describedby={`${id}-hint`} className={INPUT} />
        <button className={buttonClass('quiet')}>{words.go}</button>
      </div>
    </form>
  );
}
