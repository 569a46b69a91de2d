import { v7 as newId } from 'uuid';

/** @typedef {import('./client.mjs').Client} Client */
/** @typedef {import('./records.mjs').Records} Records */

/**
 * What Harrowdale wants from the season that begins in autumn 2027: junipers for Hag Bank, and yews of more trees than there are.
 *
 * @param {Client} owner
 * @param {Records} records
 */
export async function planTheSeason(owner, { species, stands, recipes }) {
  const plan = await owner.add('plans', { name: 'Sticking in autumn 2027', season: 2027, note: 'For the planting in spring 2029.' });
  const sites = await owner.send('GET', owner.of('sites'));
  const hagBank = sites.find((/** @type {{ name: string }} */ { name }) => name === 'Hag Bank');
  const target = (/** @type {object} */ more) => owner.send('POST', owner.of(`plans/${plan}/targets`), { id: newId(), ...more });
  await target({
    standId: stands.get('Corran Ridge'), taxonId: species.get('Juniperus communis'), siteId: hagBank.id, plants: 60, donors: 10, confidence: 0.8, stickOn: '2027-10-16', lengthCm: 12,
    recipeVersionId: recipes.get('IBA 3000 ppm, sand:peat 1:1'), otherRecipeVersionId: recipes.get('IBA 8000 ppm, sand:peat 1:1'), wood: 'hardwood', lightHours: 12, placesPerDonor: 2,
  });
  await target({ standId: stands.get('Lowmire Wood'), taxonId: species.get('Taxus baccata'), stage: 'potted', plants: 30, donors: 6, confidence: 0.9, recipeVersionId: recipes.get('no hormone, sand:peat 1:1'), lengthCm: 10, placesPerDonor: 1 });
}
