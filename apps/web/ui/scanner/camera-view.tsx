import { type RefObject, useEffect, useRef } from 'react';
import { buttonClass } from '../button-class.ts';
import type { ScannerWords } from './scanner-words.ts';
import { type CameraState, useCamera } from './use-camera.ts';

interface CameraViewProps {
  readonly words: ScannerWords;
  readonly onRead: (text: string) => void;
  /** Given the way to stop, for whoever knows that enough was read. */
  readonly stopRef: RefObject<(() => void) | undefined>;
}

/** A large button, and once it was pressed the picture. What keeps it from showing is said, with what to do instead. */
export function CameraView({ words, onRead, stopRef }: CameraViewProps) {
  const video = useRef<HTMLVideoElement>(null);
  const { state, start, stop, torch } = useCamera(video, onRead);
  useEffect(() => { stopRef.current = stop; });
  const isShown = state === 'on' || state === 'starting';
  return (
    <div className="grid gap-3">
      <div className={`relative overflow-hidden rounded-md ${isShown ? '' : 'hidden'}`}>
        <video ref={video} muted playsInline aria-label={words.aim} className="h-[38dvh] w-full" />
        <span className="scan-aim" aria-hidden />
      </div>
      <p role="status" className="empty:hidden">{sayState(state, words)}</p>
      <div className="flex flex-wrap gap-3">
        {isShown
          ? <button type="button" onClick={stop} className={buttonClass('quiet')}>{words.stop}</button>
          : <button type="button" onClick={start} className={`${buttonClass('main')} min-h-20 w-full text-lg`}>{words.camera}</button>}
        {torch && <button type="button" aria-pressed={torch.isOn} onClick={torch.turn} className={buttonClass('quiet')}>{torch.isOn ? words.torchOff : words.torchOn}</button>}
      </div>
    </div>
  );
}

function sayState(state: CameraState, words: ScannerWords): string | undefined {
  if (state === 'off') return undefined;
  if (state === 'starting' || state === 'rested' || state === 'noReader') return words[state];
  return state === 'on' ? words.aim : words.troubles[state];
}
