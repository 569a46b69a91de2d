import { v7 as newId } from 'uuid';

/** @typedef {import('./client.mjs').Client} Client */
/** @typedef {import('./records.mjs').Records} Records */
/** @typedef {{ batchId: string, covered: number, proposed: number }} Supply */

/**
 * Who asked for plants in the autumn of 2026: a school that still waits, rangers for whom
 * plants are set aside, and the commoners, who got theirs back for what was collected on their land.
 *
 * @param {Client} owner
 * @param {Records} records
 */
export async function answerRequests(owner, { species, stands, partners }) {
  const juniper = { taxonId: species.get('Juniperus communis'), stage: 'potted' };
  const school = partners.get('Lowmire School');
  await owner.add('places', { kind: 'partner', name: 'Lowmire School garden', partnerId: school, walkOrder: 90 });
  await owner.add('requests', { ...juniper, partnerId: school, plants: 15, mostPerDonor: 2, askedOn: '2026-11-16', wantedOn: '2027-02-26', note: 'For the hedge behind the playing field.' });

  const rangers = await owner.add('requests', { ...juniper, outside: 'Thornber Rangers', plants: 12, mostPerDonor: 3, standIds: [stands.get('Corran Ridge')], askedOn: '2026-11-02', wantedOn: '2026-12-11' });
  await setAside(owner, rangers);
  await owner.send('PUT', owner.of(`requests/${rangers}/state`), { state: 'promised' }, '*');

  const permissions = await owner.send('GET', owner.of('permissions'));
  const permission = permissions.find((/** @type {{ grantedBy: string }} */ { grantedBy }) => grantedBy === 'Harrowdale Commoners');
  const commoners = await owner.add('requests', { ...juniper, outside: 'Harrowdale Commoners', plants: 10, mostPerDonor: 2, askedOn: '2026-10-20', permissionId: permission.id });
  await setAside(owner, commoners);
  await despatch(owner, commoners);
}

/**
 * Pots for the commoners to keep until spring: in their hands, and not counted there yet.
 *
 * @param {Client} owner
 * @param {Records} records
 */
export async function giveToCommoners(owner, { partners, stands }) {
  const commoners = partners.get('Harrowdale Commoners');
  const yard = await owner.add('places', { kind: 'partner', name: 'Commoners’ yard', partnerId: commoners, walkOrder: 91 });
  const potted = await owner.send('GET', `${owner.of('batches')}?stage=potted&state=alive&standId=${stands.get('Skell Gill')}`);
  const [batch] = potted.filter((/** @type {{ held: boolean, balance: number }} */ { held, balance }) => !held && balance >= 4);
  await owner.log('desk', [{ observedOn: '2026-11-21', saying: { kind: 'givenOut', batchId: batch.id, n: 3, partnerId: commoners, toBatchId: newId(), placeId: yard, label: 'HC01' } }]);
}

/** What the pick proposes. @param {Client} owner @param {string} id */
async function setAside(owner, id) {
  const { supplies } = await owner.send('GET', owner.of(`requests/${id}/plants`));
  const lines = supplies.filter((/** @type {Supply} */ { proposed }) => proposed > 0).map((/** @type {Supply} */ { batchId, proposed }) => ({ batchId, n: proposed }));
  await owner.send('PUT', owner.of(`requests/${id}/reservations`), { lines }, '*');
}

/** What is set aside goes. @param {Client} owner @param {string} id */
async function despatch(owner, id) {
  const { supplies } = await owner.send('GET', owner.of(`requests/${id}/plants`));
  const lines = supplies.filter((/** @type {Supply} */ { covered }) => covered > 0).map((/** @type {Supply} */ { batchId, covered }) => ({ batchId, n: covered, entryId: newId(), toBatchId: newId() }));
  await owner.send('POST', owner.of(`requests/${id}/despatch`), { observedOn: '2026-11-21', lines });
}
