import { join } from 'node:path';
import { keptSecret } from './kept-secret.mjs';
import { readyPhotoFolder } from './photo-folder.mjs';
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
 * @param {boolean} [options.isDemoWanted] load the demo when there is no programme yet
 * @param {(words: string) => void} options.say
 * @returns {Promise<{ url: string }>}
 */
export async function serve({ root, settings, database, dev, isDemoWanted = false, say }) {
  const { host } = settings;
  const port = await choosePort({ host, port: settings.port, wasAskedFor: settings.portWasAskedFor });
  if (port !== settings.port) say(`Port ${settings.port} is taken, so it is ${port} this time.`);

  const baseUrl = settings.baseUrl ?? `http://localhost:${port}`;
  const secret = settings.secret ?? keptSecret(join(root, '.data'));
  const { photoFolder } = database;
  readyPhotoFolder(photoFolder);
  const install = { baseUrl, secret, photoFolder, databaseUrls: { app: database.app, auth: database.auth, keeper: database.keeper } };
  const { startApi } = await import('@sprigline/api');
  const { welcome } = await import('./welcome.mjs');
  if (isDemoWanted) await loadDemoIfEmpty({ install, database, say });

  const web = await webHandler({ root, dev, host, port });
  onStop(() => web.close());
  const api = await startApi({ ...install, port, host, trustedProxies: settings.trustedProxies, requestsPerMinute: settings.requestsPerMinute, web: web.handle });
  onStop(() => api.close());

  const waysIn = await welcome(install, database);
  say(`\nSprigline is at ${baseUrl}`);
  if (host === '127.0.0.1') say('Only this machine can reach it; HOST=0.0.0.0 lets others in.');
  for (const line of waysIn) say(line);
  return { url: baseUrl };
}

/** @param {{ install: { baseUrl: string, secret: string, photoFolder: string, databaseUrls: { app: string, auth: string, keeper: string } }, database: import('./open-database.mjs').OpenDatabase, say: (words: string) => void }} options */
async function loadDemoIfEmpty({ install, database, say }) {
  const { countProgrammes, loadDemo } = await import('../demo/load-demo.mjs');
  if ((await countProgrammes(database.keeper)).all > 0) return;
  if (!database.owner) throw new Error('The demo needs DATABASE_OWNER_URL, to mark its programme as invented.');
  say('Loading the invented Harrowdale programme ...');
  await loadDemo(install, database.owner);
}
