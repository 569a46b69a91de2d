import { createServer } from 'node:net';

/**
 * A port of this machine that nobody listens on at this moment. Somebody may
 * take it before it is used, so whoever uses it must be ready to ask again.
 *
 * @returns {Promise<number>}
 */
export function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => {
        if (address && typeof address === 'object') resolve(address.port);
        else reject(new Error('This machine offers no free port.'));
      });
    });
  });
}
