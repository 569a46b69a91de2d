import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { type Camera, isBlack, NoCamera, openCamera } from './camera.ts';
import { type CodeReader, codeReader } from './code-reader.ts';
import { isSeenAnew, type LastSeen, nearestToMiddle } from './code-seen.ts';
import type { CameraTrouble } from './scanner-words.ts';

export type CameraState = 'off' | 'starting' | 'on' | 'rested' | 'noReader' | CameraTrouble;

/** From one look at the picture to the next: a phone stays cool, and nobody notices. */
const LOOK_EVERY_MS = 150;
/** Nothing read for so long: the camera rests, for the battery and for whoever stands in front of it. */
const REST_AFTER_MS = 60_000;
/** Black for so long is a fault and no shadow; then the camera is asked afresh, once. */
const BLACK_FOR_MS = 2_500;

interface CameraUse {
  readonly state: CameraState;
  readonly start: () => void;
  readonly stop: () => void;
  readonly torch: { readonly isOn: boolean; readonly turn: () => void } | undefined;
}

/**
 * The camera and what it reads. Stops when the page is left or hidden, and after a minute without a code.
 *
 * @param onRead every code once, until it has been out of the picture
 */
export function useCamera(video: RefObject<HTMLVideoElement | null>, onRead: (text: string) => void): CameraUse {
  const [state, setState] = useState<CameraState>('off');
  const [camera, setCamera] = useState<Camera>();
  const [isLit, setLit] = useState(false);
  const read = useRef(onRead);
  useEffect(() => { read.current = onRead; });
  // Counts starts: what a start before was still waiting for is thrown away.
  const turn = useRef(0);
  const running = useRef<Camera>(undefined);

  const end = useCallback((next: CameraState) => {
    turn.current += 1;
    running.current?.stop();
    running.current = undefined;
    setCamera(undefined);
    setLit(false);
    setState(next);
  }, []);

  const start = useCallback((isAfresh = false) => {
    const [element, mine] = [video.current, (turn.current += 1)];
    if (!element) return;
    running.current?.stop();
    if (!isAfresh) setState('starting');
    void (async () => {
      try {
        const [reader, opened] = await readerAndCamera(element);
        if (turn.current !== mine) return opened.stop();
        // Left while the browser was still asking.
        if (document.visibilityState === 'hidden') {
          opened.stop();
          return end('off');
        }
        running.current = opened;
        setCamera(opened);
        setState('on');
        await watch({ video: element, reader, isMine: () => turn.current === mine, onRead: (text) => read.current(text), onBlack: () => (isAfresh ? end('black') : start(true)), onRest: () => end('rested') });
      } catch (error) {
        if (turn.current === mine) end(error instanceof NoCamera ? error.trouble : 'noReader');
      }
    })();
  }, [video, end]);

  useEffect(() => {
    const leave = (): void => { if (running.current) end('off'); };
    const hide = (): void => { if (document.visibilityState === 'hidden') leave(); };
    window.addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hide);
    return () => {
      window.removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', hide);
      turn.current += 1;
      running.current?.stop();
    };
  }, [end]);

  const light = camera?.torch;
  return {
    state,
    start: () => start(),
    stop: () => end('off'),
    torch: light && { isOn: isLit, turn: () => void light(!isLit).then(() => setLit(!isLit), () => setLit(false)) },
  };
}

/** Both at once, since a person waits. A camera that nobody can read from is closed again. */
async function readerAndCamera(video: HTMLVideoElement): Promise<[CodeReader, Camera]> {
  const opening = openCamera(video);
  try {
    return [await codeReader(), await opening];
  } catch (error) {
    opening.then(({ stop }) => stop(), () => undefined);
    throw error;
  }
}

interface Watch {
  readonly video: HTMLVideoElement;
  readonly reader: CodeReader;
  readonly isMine: () => boolean;
  readonly onRead: (text: string) => void;
  readonly onBlack: () => void;
  readonly onRest: () => void;
}

/** Looks again and again, until another start, a stop, a black picture or a minute without a code. */
async function watch({ video, reader, isMine, onRead, onBlack, onRest }: Watch): Promise<void> {
  let last: LastSeen | undefined;
  let [seenMs, lightMs] = [performance.now(), performance.now()];
  while (isMine()) {
    const text = nearestToMiddle(await reader(video));
    const nowMs = performance.now();
    if (!isMine()) return;
    if (text !== undefined) {
      if (isSeenAnew(last, text, nowMs)) onRead(text);
      last = { text, atMs: nowMs };
      seenMs = nowMs;
    }
    if (!isBlack(video)) lightMs = nowMs;
    if (nowMs - lightMs > BLACK_FOR_MS) return onBlack();
    if (nowMs - seenMs > REST_AFTER_MS) return onRest();
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
}
