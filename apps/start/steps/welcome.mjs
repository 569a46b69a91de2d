import { makeSetupLink } from '@sprigline/api';
import { howToSignIn } from '../demo/accounts.mjs';
import { countProgrammes } from '../demo/load-demo.mjs';

/**
 * How to get in: the demo's accounts, or the one-time link of an empty install.
 *
 * @param {{ baseUrl: string, secret: string, databaseUrls: { app: string, auth: string, keeper: string } }} install
 * @param {{ keeper: string }} database
 * @returns {Promise<string[]>}
 */
export async function welcome(install, { keeper }) {
  const { all, demo } = await countProgrammes(keeper);
  if (demo > 0) return [...howToSignIn(install.secret), 'To begin with trees of your own: DATA_DIR=some-other-folder npm start -- --empty'];
  if (all > 0) return [];
  const link = await makeSetupLink(install);
  return link === undefined ? [] : ['Nothing is set up yet. This link works once, for three days:', `  ${link}`];
}
