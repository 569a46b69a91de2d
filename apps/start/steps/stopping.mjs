// What must be undone when Sprigline stops, last thing first.

/** @type {Array<() => Promise<void>>} */
const undo = [];
let isStopping = false;

/** @param {() => Promise<void>} step */
export const onStop = (step) => void undo.push(step);

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
