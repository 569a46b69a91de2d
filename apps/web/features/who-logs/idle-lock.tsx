'use client';

import { lazy, type ReactNode, Suspense, useEffect, useState } from 'react';

const LockScreen = lazy(() => import('./lock-screen.tsx').then((file) => ({ default: file.LockScreen })));

interface IdleLockProps {
  /** Of what is on the screen; nothing where that is of all. */
  readonly programme: string | undefined;
  readonly children: ReactNode;
}

/** On a shared device, asks who is there when nobody touched it for a while. What was being tapped in stays behind it as it was. */
export function IdleLock({ programme, children }: IdleLockProps) {
  const [isLocked, setLocked] = useState(false);
  useEffect(() => {
    let isGone = false;
    let stop: (() => void) | undefined;
    // Both parts are there before anything is locked.
    Promise.all([import('./watch-idle.ts'), import('./lock-screen.tsx')]).then(([{ watchIdle }]) => (isGone ? undefined : (stop = watchIdle(() => setLocked(true)))), () => undefined);
    return () => {
      isGone = true;
      stop?.();
    };
  }, []);
  return (
    <>
      <div inert={isLocked} hidden={isLocked}>{children}</div>
      {isLocked && <Suspense><LockScreen programme={programme} open={() => setLocked(false)} /></Suspense>}
    </>
  );
}
