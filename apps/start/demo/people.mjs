import { accountsOf, HANDLE } from './accounts.mjs';
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
    const { link } = await owner.send('POST', owner.of('invitations'), { ...(await withId()), forName: accounts[role].name, role, seesExact: role === 'coordinator' });
    const token = String(link).split('/').at(-1);
    await new Client(app, baseUrl).send('POST', `/api/v1/invitations/${token}/acceptance`, { account: accounts[role] });
  }
  for (const name of (await readRecords()).people) await owner.add('people', { name });
  return HANDLE;
}

async function withId() {
  const { v7 } = await import('uuid');
  return { id: v7() };
}
