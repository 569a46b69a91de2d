// What must be undone when Sprigline stops, last thing first.

import { setTimeout as sleep } from 'node:timers/promises';

/** Somebody reading slowly on a bad line must not keep the whole service from stopping. */
const USUAL_SECONDS = 10;

/** @type {Array<() => Promise<void>>} */
const undo = [];
let isStopping = false;

/**
 * @param {() => Promise<void>} step
 * @param {number} [seconds] how long to wait for it
 */
export function onStop(step, seconds = USUAL_SECONDS) {
  undo.push(() => Promise.race([step(), sleep(seconds * 1000, undefined, { ref: false })]));
}

export const isBeingStopped = () => isStopping;

/**
 * A second call waits for the first, so that what one step ends (the database,
 * say) does not cut the others short.
 *
 * @param {number} status what the process answers to whoever started it
 * @returns {Promise<never>}
 */
export async function stop(status) {
  if (isStopping) return new Promise(() => {});
  isStopping = true;
  for (const step of undo.splice(0).reverse()) {
    await step().catch((error) => {
      console.error(error);
      status = 1;
    });
  }
  process.exit(status);
}

/**
 * The first signal stops in order, a second one at once.
 * @param {(words: string) => void} say
 */
export function stopOnSignals(say) {
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
    process.on(signal, () => {
      if (isStopping) process.exit(1);
      say('Stopping.');
      void stop(0);
    });
  }
}
