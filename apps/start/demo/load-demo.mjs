import { createApi, makeSetupLink } from '@sprigline/api';
import pg from 'pg';
import { accountsOf, HANDLE } from './accounts.mjs';
import { bringSheet } from './bring-sheet.mjs';
import { Client } from './client.mjs';
import { letPartnerIn, makePeople } from './people.mjs';
import { makeRecords } from './records.mjs';
import { walkThePlaces, workTheAutumn } from './autumn.mjs';
import { drawPhotos } from './photos.mjs';
import { planTheSeason } from './plans.mjs';
import { keepTheHouse } from './places-at-work.mjs';
import { trialOfRecipes } from './trial.mjs';
import { answerRequests, giveToCommoners } from './requests.mjs';

/** @typedef {import('./accounts.mjs').Install} Install */

/**
 * Loads the invented Harrowdale programme into an empty install, through the same
 * door as everybody: what the demo shows has been accepted by the API.
 *
 * @param {Install & { photoFolder: string, databaseUrls: { app: string, auth: string, keeper: string } }} install
 * @param {string} ownerUrl login that may mark the programme as a demo
 * @throws {Error} when a programme is there already: examples never stand among real trees
 */
export async function loadDemo(install, ownerUrl) {
  const link = await makeSetupLink(install);
  if (link === undefined) throw new Error('The demo is loaded into an empty install only; this one holds a programme already.');

  const app = await createApi({ ...install, port: 0, log: 'error' });
  try {
    const accounts = accountsOf(install.secret);
    const owner = new Client(app, install.baseUrl);
    await owner.send('POST', '/api/v1/setup', {
      token: link.split('/').at(-1),
      account: accounts.owner,
      programme: { handle: HANDLE, name: 'Harrowdale', zone: 'Europe/London', seasonStartsIn: 10, rootedMeans: 'one root of 1 cm or more, seen' },
    });
    await owner.signIn(accounts.owner);
    await markAsDemo(ownerUrl);
    await makePeople(owner, app, install);
    const records = await makeRecords(owner);
    await bringSheet(owner);
    await trialOfRecipes(owner, records);
    await workTheAutumn(owner, records);
    await keepTheHouse(owner);
    await drawPhotos(owner, records);
    await answerRequests(owner, records);
    await giveToCommoners(owner, records);
    await planTheSeason(owner, records);
    await walkThePlaces(owner);
    await letPartnerIn(owner, app, install, records.partners.get('Harrowdale Commoners'));
  } finally {
    await app.close();
  }
}

/** @param {string} ownerUrl */
async function markAsDemo(ownerUrl) {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query('UPDATE programme SET is_demo = true WHERE handle = $1', [HANDLE]);
  } finally {
    await client.end();
  }
}

/**
 * How many programmes there are, and how many of them are examples.
 *
 * @param {string} keeperUrl login that sees past row-level security
 * @returns {Promise<{ all: number, demo: number }>}
 */
export async function countProgrammes(keeperUrl) {
  const client = new pg.Client({ connectionString: keeperUrl });
  await client.connect();
  try {
    const { rows } = await client.query('SELECT count(*)::int AS "all", count(*) FILTER (WHERE is_demo)::int AS demo FROM programme');
    return rows[0];
  } finally {
    await client.end();
  }
}
