import { onNews } from '../../lib/phone/news.ts';
import { isIdle, isShared, keepTouch, lastTouch } from '../../lib/phone/shared.ts';
import { theStore } from '../../lib/phone/store.ts';

const LOOK_EVERY_MS = 5_000;

/** Says when a shared device was left alone. @returns how to stop */
export function watchIdle(lock: () => void): () => void {
  let shared = false;
  let locked = false;
  let kept = 0;
  const look = (): void => {
    locked = shared && isIdle(lastTouch(window.localStorage), Date.now());
    if (locked) lock();
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

/** Somebody is there. */
export const somebodyIsHere = (): void => keepTouch(window.localStorage, Date.now());
