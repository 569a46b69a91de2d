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
    const newcomer = new Client(app, baseUrl);
    await join(owner, newcomer, accounts[role], { role, seesExact: role === 'coordinator' });
    if (role !== 'volunteer') continue;
    await newcomer.signIn(accounts[role]);
    await carryPhones(newcomer);
  }
  for (const name of (await readRecords()).people) await owner.add('people', { name });
}

/**
 * A tablet at the bench, which has sent all it had, and a phone with three entries left on it: from the next day on they count as stuck.
 *
 * @param {Client} volunteer
 */
async function carryPhones(volunteer) {
  const heard = { app: null, hasPacked: false };
  await volunteer.send('PUT', volunteer.of(`devices/${newId()}`), { ...heard, name: 'Bench tablet', unsent: 0, oldestUnsentOn: null });
  await volunteer.send('PUT', volunteer.of(`devices/${newId()}`), { ...heard, name: 'Old phone', unsent: 3, oldestUnsentOn: '2026-11-22' });
}

/**
 * Somebody of the commoners, on whose land two of the stands and one of the sites lie.
 *
 * @param {Client} owner
 * @param {Awaited<ReturnType<typeof import('@sprigline/api').createApi>>} app
 * @param {import('./accounts.mjs').Install} install
 * @param {string | undefined} partnerId
 */
export async function letPartnerIn(owner, app, { secret, baseUrl }, partnerId) {
  await join(owner, new Client(app, baseUrl), accountsOf(secret).partner, { role: 'partner', partnerId });
}

/**
 * @param {Client} owner
 * @param {Client} newcomer
 * @param {{ name: string, email: string, password: string }} account
 * @param {object} invitation
 */
async function join(owner, newcomer, account, invitation) {
  const { link } = await owner.send('POST', owner.of('invitations'), { id: newId(), forName: account.name, ...invitation });
  await newcomer.send('POST', `/api/v1/invitations/${String(link).split('/').at(-1)}/account`, account);
}
