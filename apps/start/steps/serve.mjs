import { join } from 'node:path';
import { keptSecret } from './kept-secret.mjs';
import { onStop } from './stopping.mjs';
import { webHandler } from './web-handler.mjs';
import { choosePort } from './web-port.mjs';

/**
 * Serves the API and the web app on one port, and says where.
 *
 * @param {object} options
 * @param {string} options.root the clone
 * @param {import('../settings.mjs').Settings} options.settings
 * @param {import('./open-database.mjs').OpenDatabase} options.database
 * @param {boolean} options.dev
 * @param {'load' | 'reset' | undefined} [options.demo]
 * @param {(words: string) => void} options.say
 * @returns {Promise<{ url: string }>}
 */
export async function serve({ root, settings, database, dev, demo, say }) {
  const { host } = settings;
  const port = await choosePort({ host, port: settings.port, wasAskedFor: settings.portWasAskedFor });
  if (port !== settings.port) say(`Port ${settings.port} is taken, so it is ${port} this time.`);

  const baseUrl = settings.baseUrl ?? `http://localhost:${port}`;
  const secret = settings.secret ?? keptSecret(join(root, '.data'));
  const install = { baseUrl, secret, databaseUrls: { app: database.app, auth: database.auth, keeper: database.keeper } };
  const { startApi, welcome, loadDemo, resetDemo } = await import('@sprigline/api');

  if (demo === 'load') await loadDemo(install);
  if (demo === 'reset') await resetDemo(install);

  const web = await webHandler({ root, dev, host, port });
  onStop(() => web.close());
  const api = await startApi({ ...install, port, host, trustedProxies: settings.trustedProxies, web: web.handle });
  onStop(() => api.close());
  // Only the development server speaks over web sockets.
  if (dev) api.server?.on('upgrade', (request, socket, head) => void web.upgrade(request, socket, head));

  say(`\nSprigline is at ${baseUrl}`);
  if (host === '127.0.0.1') say('Only this machine can reach it; HOST=0.0.0.0 lets others in.');
  for (const line of (await welcome?.(install)) ?? []) say(line);
  return { url: baseUrl };
}
