import { bootstrapRoles, migrate, readPending } from '@sprigline/prisma/runner';
import { join } from 'node:path';
import { dropDemo } from '../demo/drop-demo.mjs';
import { dataHome, startPostgres } from '../postgres/index.mjs';
import { withDatabaseWords } from './database-words.mjs';
import { photoFolder } from './photo-folder.mjs';
import { isBeingStopped, onStop, stop } from './stopping.mjs';

/** The name of the built-in database. */
const DATABASE = 'sprigline';

/** Longer than PostgreSQL is given to stop in order, and then at once. */
const DATABASE_SECONDS = 70;

/**
 * @typedef {object} OpenDatabase
 * @property {string} app connection string of the login under row-level security
 * @property {string} auth
 * @property {string} keeper
 * @property {string | undefined} owner
 * @property {string} photoFolder where the pictures lie that its rows name
 */

/**
 * @param {object} options
 * @param {string} options.root the clone
 * @param {import('../settings.mjs').Settings} options.settings
 * @param {(words: string) => void} options.say
 * @param {boolean} [options.isDemoReset] throw the built-in database away first, if nothing but the demo is in it
 * @returns {Promise<OpenDatabase>} a database with all roles and migrations
 */
export function openDatabase({ root, settings, say, isDemoReset = false }) {
  if (settings.database && isDemoReset) throw new Error('The demo on a server of your own is reset by making its database anew, then npm start -- --demo.');
  if (!settings.database) return openBuiltIn({ root, settings, say, isDemoReset });
  return openGiven({ root, settings, given: settings.database, say }).catch((error) => Promise.reject(withDatabaseWords(error)));
}

/** @param {{ root: string, settings: import('../settings.mjs').Settings, say: (words: string) => void, isDemoReset: boolean }} options */
async function openBuiltIn({ root, settings, say, isDemoReset }) {
  const home = dataHome({ root, dataDir: settings.dataDir });
  say(`The data are in ${home}`);
  const postgres = await startPostgres({ home });
  onStop(() => postgres.stop(), DATABASE_SECONDS);
  void postgres.ended.then(() => {
    if (isBeingStopped()) return undefined;
    say(`The database has stopped by itself; ${join(home, 'postgres.log')} says why.`);
    return stop(1);
  });
  const photos = photoFolder({ root, settings, home });
  if (isDemoReset) await dropDemo(postgres, DATABASE, photos);
  await bootstrapRoles({ url: postgres.url('superuser', 'postgres'), database: DATABASE, logins: postgres.logins });
  const owner = postgres.url('owner', DATABASE);
  await migrateAndSay(owner, say);
  return {
    owner,
    app: postgres.url('app', DATABASE),
    auth: postgres.url('auth', DATABASE),
    keeper: postgres.url('keeper', DATABASE),
    photoFolder: photos,
  };
}

/** @param {{ root: string, settings: import('../settings.mjs').Settings, given: import('../settings.mjs').GivenDatabase, say: (words: string) => void }} options */
async function openGiven({ root, settings, given, say }) {
  const { app, owner, auth = app, keeper = owner ?? app, superuser } = given;
  if (superuser) await makeRoles({ app, owner, auth, keeper, superuser });
  if (owner) await migrateAndSay(owner, say);
  else await refusePending(app);
  return { app, owner, auth, keeper, photoFolder: photoFolder({ root, settings }) };
}

/**
 * The logins are the ones that the other settings name, passwords included.
 * @param {{ app: string, owner: string | undefined, auth: string, keeper: string, superuser: string }} urls
 */
async function makeRoles({ superuser, ...urls }) {
  const [app, owner, auth, keeper] = [urls.app, urls.owner, urls.auth, urls.keeper].map(loginIn);
  if (!app || !owner || !auth || !keeper || new Set([app, owner, auth, keeper].map(({ name }) => name)).size < 4) {
    throw new Error(
      'To make the roles, DATABASE_URL, DATABASE_OWNER_URL, DATABASE_AUTH_URL and DATABASE_KEEPER_URL must each name a login of their own.',
    );
  }
  const database = decodeURIComponent(new URL(urls.app).pathname.slice(1));
  await bootstrapRoles({ url: superuser, database, logins: { app, owner, auth, keeper } });
}

/** @param {string | undefined} url */
function loginIn(url) {
  if (url === undefined) return undefined;
  const { username, password } = new URL(url);
  return { name: decodeURIComponent(username), password: decodeURIComponent(password) };
}

/**
 * @param {string} url
 * @param {(words: string) => void} say
 */
async function migrateAndSay(url, say) {
  const applied = await migrate({ url }).catch((error) => {
    if (!/role "sprigline_\w+" does not exist/.test(error.message)) throw error;
    throw new Error(
      'This server has none of the roles that Sprigline needs. Set DATABASE_SUPERUSER_URL for one start, ' +
        'or let the server’s administrator run what "npm start -- --roles-sql" prints.',
      { cause: error },
    );
  });
  if (applied.length > 0) say(`The database has been brought up to ${applied.at(-1)}.`);
}

/** @param {string} url */
async function refusePending(url) {
  const pending = await readPending({ url });
  if (pending.length === 0) return;
  throw new Error(
    `The database lacks ${pending.length} migration(s), the first is ${pending[0]}. ` +
      'Set DATABASE_OWNER_URL to the login that owns it, and start again.',
  );
}
