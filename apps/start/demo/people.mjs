import { v7 as newId } from 'uuid';
import { accountsOf } from './accounts.mjs';
import { Client } from './client.mjs';
import { readRecords } from './read-records.mjs';

/**
 * A coordinator and a volunteer by invitation, and some people known by name only.
 *
 * @param {Client} owner
 * @param {Awaited<ReturnType<typeof import('@sprigline/api').createApi>>} app
 * @param {import('./accounts.mjs').Install} install
 */
export async function makePeople(owner, app, { secret, baseUrl }) {
  const accounts = accountsOf(secret);
  for (const role of /** @type {const} */ (['coordinator', 'volunteer'])) {
    const { link } = await owner.send('POST', owner.of('invitations'), { id: newId(), forName: accounts[role].name, role, seesExact: role === 'coordinator' });
    const token = String(link).split('/').at(-1);
    await new Client(app, baseUrl).send('POST', `/api/v1/invitations/${token}/account`, accounts[role]);
  }
  for (const name of (await readRecords()).people) await owner.add('people', { name });
}
