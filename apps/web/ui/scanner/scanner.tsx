'use client';

import './scanner.css';
import { useId, useRef, useState } from 'react';
import { beep, isSoundOn } from './beep.ts';
import { CameraView } from './camera-view.tsx';
import { CodeField } from './code-field.tsx';
import { type CodeSaid, codeSaid } from './code-said.ts';
import { type Heard, HeardPanel } from './heard-panel.tsx';
import { filled, type ScannerWords } from './scanner-words.ts';
import { OtherWays } from './other-ways.tsx';
import { useWedge } from './use-wedge.ts';

/** What became of a code that was handed on. */
export interface ScanAnswer {
  readonly isTaken: boolean;
  /** Said on the screen and read out, such as "Batch T14". */
  readonly words: string;
  /** Nothing is called so: of a code with a wrong character in it, that is said instead. */
  readonly isUnknown?: boolean;
}

export interface ScannerProps {
  /** Called with a label's code, as it stands on the label. What it is of, the scanner does not know. */
  readonly onCode: (code: string) => ScanAnswer | Promise<ScanAnswer>;
  /** Called with the path of another page of this install, such as a printed list's. Without it such a code is refused. */
  readonly onPage?: (path: string) => void;
  readonly words: ScannerWords;
  /** Addresses of this install beside the one in the browser, such as the one that labels are printed with. */
  readonly addresses?: readonly string[];
  /** Many in a row: the camera goes on. Else it stops with the first code that is taken. */
  readonly isContinuous?: boolean;
  /** Where the typed code goes as `?code=` while there is no script. */
  readonly action?: string;
}

/** Reads labels by camera, by a picture, by a hand scanner that types, or by hand: one as good as the other. */
export function Scanner({ onCode, onPage, words, addresses = [], isContinuous = false, action }: ScannerProps) {
  const [heard, setHeard] = useState<Heard>();
  const stopCamera = useRef<() => void>(undefined);
  const titleId = useId();
  // One after the other, in the order in which they were read.
  const line = useRef<Promise<void>>(Promise.resolve());

  function say(answer: ScanAnswer, code?: string): void {
    if (isSoundOn()) beep(answer.isTaken);
    if (answer.isTaken && !isContinuous) stopCamera.current?.();
    setHeard((before) => ({ ...answer, code, turn: (before?.turn ?? 0) + 1 }));
  }

  async function take(text: string): Promise<void> {
    const said = codeSaid(text, [location.origin, ...addresses]);
    if (said.is === 'page' && onPage) {
      if (isSoundOn()) beep(true);
      stopCamera.current?.();
      onPage(said.path);
    } else if (said.is === 'label' || said.is === 'mistyped') {
      setHeard((before) => ({ isTaken: undefined, words: words.working, code: said.code, turn: (before?.turn ?? 0) + 1 }));
      const answer = await onCode(said.code);
      say(said.is === 'mistyped' && answer.isUnknown ? { isTaken: false, words: refusalOf(said, words, text) } : answer, said.code);
    } else say({ isTaken: false, words: refusalOf(said, words, text) });
  }

  // Most often there is no signal: what was read before stays, and the same label can be read again.
  const read = (text: string): void => {
    line.current = line.current.then(() => take(text)).catch(() => say({ isTaken: false, words: words.failed }, text.trim().slice(0, 40)));
  };

  useWedge(read);
  return (
    <section aria-labelledby={titleId} className="scanner not-on-paper grid w-full max-w-prose gap-4">
      <h2 id={titleId} className="sr-only">{words.title}</h2>
      <HeardPanel heard={heard} />
      <CodeField words={words} onTyped={read} action={action} />
      <CameraView words={words} onRead={read} stopRef={stopCamera} />
      <OtherWays words={words} onRead={read} onNothing={(why) => say({ isTaken: false, words: why })} />
    </section>
  );
}

function refusalOf(said: CodeSaid, words: ScannerWords, text: string): string {
  if (said.is === 'elsewhere') return filled(words.elsewhere, { host: said.host });
  return filled(said.is === 'mistyped' ? words.mistyped : words.noLabel, { code: text.trim().slice(0, 40) });
}
