import { type Ask, askFrom } from './ask.ts';
import { UNDO_MS } from './device.ts';
import { announce, onNews } from './news.ts';
import { unsent } from './outbox.ts';
import { type Ending, sendAll } from './sender.ts';
import { type Store, theStore } from './store.ts';

const EVERY_MS = 30_000;
const FIRST_WAIT_MS = 2_000;
const LONGEST_WAIT_MS = 300_000;

/** How the last try ended, for the line that says what is only on this device. */
let lastEnding: Ending | undefined;
export const endingOfLastTry = (): Ending | undefined => lastEnding;

let failures = 0;
let notBefore = 0;

interface Urgency {
  /** Whether the server is left alone for as long as it asked for, or as it did not answer. */
  readonly isPatient?: boolean;
  /** What is younger stays here, so that it can be undone without a trace. Milliseconds. */
  readonly holdBackMs?: number;
}

/** Tries to send; if another tab is at it, that one will do, unless somebody waits for it. One sender at a time, where the browser knows locks. */
export async function sendNow({ isPatient = true, holdBackMs = document.visibilityState === 'hidden' ? 0 : UNDO_MS }: Urgency = {}): Promise<void> {
  if (navigator.onLine === false || (isPatient && Date.now() < notBefore)) return;
  if (!navigator.locks) return tryOnce(holdBackMs);
  await navigator.locks.request('sprigline-sender', { ifAvailable: isPatient }, async (lock) => {
    if (lock) await tryOnce(holdBackMs);
  });
}

async function tryOnce(holdBackMs: number): Promise<void> {
  const store = await theStore();
  const ask = askFrom(store);
  if ((await unsent(store)).length === 0) return tellOnce(store, ask);
  const tell = await teller(store, ask);
  lastEnding = await sendAll({ store, ask, now: Date.now, holdBackMs });
  failures = lastEnding.why === 'unheard' ? failures + 1 : 0;
  notBefore = lastEnding.why === 'unheard' ? Date.now() + waitAfter(failures, lastEnding.waitS, Math.random()) : 0;
  announce();
  if (lastEnding.why === 'done') await tell();
  hasTold = true;
}

/** Whether it was told, since this page was opened, how much is only here. */
let hasTold = false;

/** With nothing to send, a page says once that there is nothing. */
async function tellOnce(store: Store, ask: Ask): Promise<void> {
  if (hasTold) return;
  hasTold = true;
  await (await teller(store, ask))();
}

/**
 * How to tell those programmes that something waits for now. Loaded once there is something to tell,
 * since a phone starts without it; where it cannot be loaded, nothing is told and everything is sent.
 */
async function teller(store: Store, ask: Ask): Promise<() => Promise<void>> {
  const telling = await import('./telling.ts').catch(() => undefined);
  const programmes = await telling?.programmesHere(store);
  return async () => telling?.tellOfDevice(store, ask, programmes ?? []);
}

/**
 * How long to leave the server alone.
 *
 * @param chance 0 to 1, so that a whole work party does not come back in the same second
 */
export function waitAfter(failed: number, askedS: number | undefined, chance: number): number {
  const longer = Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** (failed - 1));
  return Math.max((askedS ?? 0) * 1000, longer * (0.5 + chance / 2));
}

/**
 * Sends at every chance: now, when the network comes back, when the page is looked at or left,
 * a little after something was kept, and every half minute while somebody looks.
 *
 * @returns how to stop
 */
export function sendAtEveryChance(): () => void {
  const go = (): void => void sendNow().catch(() => undefined);
  const atOnce = (): void => void sendNow({ isPatient: false }).catch(() => undefined);
  let later: ReturnType<typeof setTimeout> | undefined;
  const soon = (): void => {
    later ??= setTimeout(() => ((later = undefined), go()), UNDO_MS + 200);
  };
  const each = setInterval(() => document.visibilityState === 'visible' && go(), EVERY_MS);
  const stopListening = onNews(soon);
  window.addEventListener('online', atOnce);
  document.addEventListener('visibilitychange', atOnce);
  go();
  return () => {
    clearInterval(each);
    clearTimeout(later);
    stopListening();
    window.removeEventListener('online', atOnce);
    document.removeEventListener('visibilitychange', atOnce);
  };
}
