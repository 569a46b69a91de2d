import { createRequire } from 'node:module';
import { join } from 'node:path';

/**
 * @typedef {object} Web
 * @property {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => Promise<void>} handle
 * @property {() => Promise<void>} close
 */

/**
 * The web app as a function that answers requests. Its own pages ask the API
 * over HTTP, at API_URL.
 *
 * @param {{ root: string, dev: boolean, host: string, port: number }} options
 * @returns {Promise<Web>}
 */
export async function webHandler({ root, dev, host, port }) {
  const dir = join(root, 'apps', 'web');
  process.env['API_URL'] = `http://${localAddress(host)}:${port}`;

  // Next belongs to the web app and is looked up from there.
  const next = createRequire(join(dir, 'package.json'))('next');
  const app = next({ dev, dir, hostname: host, port });
  await app.prepare();
  // In development it speaks web sockets too, and takes them from the first request's server by itself.
  return { handle: app.getRequestHandler(), close: () => app.close() };
}

/**
 * An address to listen on at all is not one to ask.
 * @param {string} host
 */
function localAddress(host) {
  if (host === '0.0.0.0') return '127.0.0.1';
  if (host === '::') return '[::1]';
  return host.includes(':') ? `[${host}]` : host;
}
