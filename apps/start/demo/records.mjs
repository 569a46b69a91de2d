import { v7 as newId } from 'uuid';
import { readRecords } from './read-records.mjs';

/**
 * The ids of what the demo's later acts name, by its own names.
 *
 * @typedef {object} Records
 * @property {Map<string, string>} stands
 * @property {Map<string, string>} species
 * @property {Map<string, string>} donorTrees by label
 * @property {Map<string, string>} recipes latest version by name
 * @property {Map<string, string>} bundles by label of the donor tree
 * @property {Map<string, string>} partners
 */

/**
 * Species, partners, stands, donor trees, recipes, sites, permissions and trips.
 *
 * @param {import('./client.mjs').Client} owner
 * @returns {Promise<Records>}
 */
export async function makeRecords(owner) {
  const said = await readRecords();
  const species = await addAll(owner, 'taxa', said.species, (one) => one.scientificName);
  const partners = await addAll(owner, 'partners', said.partners, (one) => one.name);
  const stands = await addAll(owner, 'stands', said.stands.map((/** @type {any} */ stand) => standOf(stand, partners)), (one) => one.name);
  const trees = said.donorTrees.map((/** @type {any} */ tree) => treeOf(tree, stands, species));
  const donorTrees = await addAll(owner, 'donor-trees', trees, (one) => one.label);
  const recipes = await addRecipes(owner, said.recipes);
  await addAll(owner, 'sites', said.sites.map((/** @type {any} */ site, /** @type {number} */ at) => siteOf(site, at, partners)), (one) => one.name);
  for (const { stand, species: kind, ...permission } of said.permissions) {
    await owner.add('permissions', { ...permission, standId: stands.get(stand), taxonIds: [species.get(kind)] });
  }
  return { stands, species, donorTrees, recipes, partners, bundles: await addTrips(owner, said.trips, stands, donorTrees) };
}

/**
 * @param {import('./client.mjs').Client} owner
 * @param {string} noun
 * @param {any[]} records
 * @param {(record: any) => string} nameOf
 * @returns {Promise<Map<string, string>>} ids by name
 */
async function addAll(owner, noun, records, nameOf) {
  const ids = new Map();
  for (const record of records) ids.set(nameOf(record), await owner.add(noun, record));
  return ids;
}

/** @param {any} stand @param {Map<string, string>} partners */
const standOf = ({ name, note, partner, latitude, longitude, elevationM }, partners) => ({
  name, note, partnerId: partners.get(partner) ?? null, place: { latitude, longitude, elevationM, uncertaintyM: 50 },
});

/** @param {any} tree @param {Map<string, string>} stands @param {Map<string, string>} species */
const treeOf = ({ stand, species: kind, latitude, longitude, elevationM, ...tree }, stands, species) => ({
  ...tree, standId: stands.get(stand), taxonId: species.get(kind), stateSeenOn: '2026-09-12',
  place: { latitude, longitude, elevationM, uncertaintyM: 8 },
});

/** @param {any} site @param {number} at @param {Map<string, string>} partners */
const siteOf = ({ name, land, partner, plots }, at, partners) => ({
  name, land, walkOrder: 100 + at, partnerId: partners.get(partner) ?? null,
  plots: plots.map((/** @type {string} */ plot, /** @type {number} */ order) => ({ id: newId(), name: plot, walkOrder: order })),
});

/** @param {import('./client.mjs').Client} owner @param {any[]} recipes */
async function addRecipes(owner, recipes) {
  const versions = new Map();
  for (const { name, ...version } of recipes) {
    const id = newId();
    await owner.add('recipes', { name, version: { id, madeOn: '2024-09-30', ...version } });
    versions.set(name, id);
  }
  return versions;
}

/**
 * @param {import('./client.mjs').Client} owner
 * @param {any[]} trips
 * @param {Map<string, string>} stands
 * @param {Map<string, string>} donorTrees
 * @returns {Promise<Map<string, string>>} ids of bundles by the label of their donor tree
 */
async function addTrips(owner, trips, stands, donorTrees) {
  const ids = new Map();
  for (const { stand, bundles, ...trip } of trips) {
    const made = bundles.map((/** @type {[string, number]} */ [label, cuttings]) => {
      ids.set(label, newId());
      return { id: ids.get(label), donorTreeId: donorTrees.get(label), cuttings, heightM: 1.2, shoot: 'side', foliage: 'adult', base: 'heel', lengthCm: 9 };
    });
    await owner.add('trips', { ...trip, standId: stands.get(stand), bundles: made });
  }
  return ids;
}
