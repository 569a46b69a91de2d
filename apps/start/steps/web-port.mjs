import { createServer } from 'node:net';

/** How far to look when the usual port is taken. */
const TRIES = 20;

/**
 * The port to serve on. One that was asked for is taken or refused; the usual
 * one gives way to the next free one.
 *
 * @param {{ host: string, port: number, wasAskedFor: boolean }} options
 * @returns {Promise<number>}
 */
export async function choosePort({ host, port, wasAskedFor }) {
  for (let candidate = port; candidate < port + (wasAskedFor ? 1 : TRIES); candidate++) {
    if (await isFree(host, candidate)) return candidate;
  }
  throw new Error(
    wasAskedFor
      ? `Port ${port} is taken by another program. Stop that one, or choose another port: PORT=${port + 1} npm start`
      : `The ports ${port} to ${port + TRIES - 1} are all taken. Choose another: PORT=4000 npm start`,
  );
}

/**
 * @param {string} host
 * @param {number} port
 * @returns {Promise<boolean>}
 */
function isFree(host, port) {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === 'EADDRINUSE') resolve(false);
      else if (error.code === 'EACCES') reject(new Error(`Port ${port} needs more rights than you have. Choose one above 1023.`));
      else reject(new Error(`Cannot listen on ${host}: ${error.message}. Is HOST an address of this machine?`));
    });
    probe.listen(port, host, () => probe.close(() => resolve(true)));
  });
}
