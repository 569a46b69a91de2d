import { type ChangeEvent, useEffect, useState } from 'react';
import { buttonClass } from '../button-class.ts';
import { MARK } from '../form/plate.ts';
import { beep, isSoundOn, keepSound } from './beep.ts';
import { nearestToMiddle } from './code-seen.ts';
import { codeReader } from './code-reader.ts';
import type { ScannerWords } from './scanner-words.ts';

interface OtherWaysProps {
  readonly words: ScannerWords;
  readonly onRead: (text: string) => void;
  /** No code was found in a picture. */
  readonly onNothing: (why: string) => void;
}

/** A picture of the label, where the page may not use the camera itself; what a hand scanner does; and the sound. */
export function OtherWays({ words, onRead, onNothing }: OtherWaysProps) {
  const [isReading, setReading] = useState(false);

  async function readFile(event: ChangeEvent<HTMLInputElement>): Promise<void> {
    const [input, file] = [event.currentTarget, event.currentTarget.files?.[0]];
    if (!file) return;
    setReading(true);
    const found = await codeInFile(file, words);
    setReading(false);
    // The same picture may be chosen again.
    input.value = '';
    if (found.text === undefined) onNothing(found.why);
    else onRead(found.text);
  }

  return (
    <div className="grid gap-3">
      <label className={`${buttonClass('quiet')} focus-within:outline-3 focus-within:outline-offset-2`}>
        {isReading ? words.working : words.file}
        <input type="file" accept="image/*" capture="environment" disabled={isReading} onChange={(event) => void readFile(event)} className="sr-only" />
      </label>
      <SoundTick words={words} />
      <p className="text-sm text-ink-soft">{words.wedge}</p>
    </div>
  );
}

function SoundTick({ words }: { words: ScannerWords }) {
  const [isOn, setOn] = useState(true);
  useEffect(() => setOn(isSoundOn()), []);

  function turn(next: boolean): void {
    setOn(next);
    keepSound(next);
    if (next) beep(true);
  }

  return (
    <label className="flex min-h-14 items-center gap-3">
      <input type="checkbox" checked={isOn} onChange={(event) => turn(event.currentTarget.checked)} className={MARK} /> {words.sound}
    </label>
  );
}

type InFile = { readonly text: string } | { readonly text?: undefined; readonly why: string };

async function codeInFile(file: File, words: ScannerWords): Promise<InFile> {
  const picture = await createImageBitmap(file).catch(() => undefined);
  if (!picture) return { why: words.notAPicture };
  try {
    const text = nearestToMiddle(await (await codeReader())(picture));
    return text === undefined ? { why: words.noCodeInFile } : { text };
  } catch {
    return { why: words.noReader };
  } finally {
    picture.close();
  }
}
