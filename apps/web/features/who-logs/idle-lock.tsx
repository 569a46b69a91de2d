'use client';

import { lazy, type ReactNode, Suspense, useEffect, useState } from 'react';
import { onNews } from '../../lib/phone/news.ts';
import { isIdle, isShared, keepTouch, lastTouch } from '../../lib/phone/shared.ts';
import { theStore } from '../../lib/phone/store.ts';

const LockScreen = lazy(() => import('./lock-screen.tsx').then((file) => ({ default: file.LockScreen })));

const LOOK_EVERY_MS = 5_000;

interface IdleLockProps {
  /** Of what is on the screen; nothing where that is of all. */
  readonly programme: string | undefined;
  readonly children: ReactNode;
}

/** On a shared device, asks who is there when nobody touched it for a while. What was being tapped in stays behind it as it was. */
export function IdleLock({ programme, children }: IdleLockProps) {
  const [isLocked, setLocked] = useState(false);
  useEffect(() => watch(setLocked), []);
  function open(): void {
    keepTouch(window.localStorage, Date.now());
    setLocked(false);
  }
  return (
    <>
      <div inert={isLocked} hidden={isLocked}>{children}</div>
      {isLocked && <Suspense><LockScreen programme={programme} open={open} /></Suspense>}
    </>
  );
}

/** @returns how to stop */
function watch(lock: (is: boolean) => void): () => void {
  let shared = false;
  let locked = false;
  let kept = 0;
  const look = (): void => {
    locked = shared && isIdle(lastTouch(window.localStorage), Date.now());
    if (locked) lock(true);
  };
  const ask = (): void => void theStore().then(isShared).then((is) => ((shared = is), look()), () => undefined);
  const touched = (): void => {
    // First whether it had been idle: the touch that wakes a tablet is nobody's yet.
    look();
    if (!shared || locked || Date.now() - kept < LOOK_EVERY_MS) return;
    kept = Date.now();
    keepTouch(window.localStorage, kept);
  };
  const each = setInterval(look, LOOK_EVERY_MS);
  const stopListening = onNews(ask);
  for (const name of ['pointerdown', 'keydown']) window.addEventListener(name, touched, true);
  document.addEventListener('visibilitychange', look);
  ask();
  return () => {
    clearInterval(each);
    stopListening();
    for (const name of ['pointerdown', 'keydown']) window.removeEventListener(name, touched, true);
    document.removeEventListener('visibilitychange', look);
  };
}
