import { v7 as newId } from 'uuid';

/** @typedef {import('./client.mjs').Client} Client */
/** @typedef {import('./records.mjs').Records} Records */
/** @typedef {{ tree: string, recipe: string, tray: number, rows: string, on: string, n: number, seen: number, rooted: number }} Half */

const [PLAIN, WITH] = ['no hormone, sand:peat 1:1', 'IBA 3000 ppm, sand:peat 1:1'];

/** Rooted of twelve cuttings each, without hormone and with it: felt in winter, lifted in May. */
const JUNIPERS = /** @type {const} */ ([['WS-01', [1, 4], [3, 8]], ['WS-02', [2, 6], [4, 9]], ['WS-03', [0, 2], [2, 6]], ['WS-04', [1, 5], [3, 8]], ['WS-05', [0, 3], [1, 5]], ['WS-06', [2, 6], [5, 10]]]);

/**
 * The autumn of 2025: junipers of Winterbeck Scar stuck half with hormone and half without, tree by tree, which can be
 * compared; and two yews, each under a recipe of its own in a tray and on a day of its own, which cannot.
 *
 * @param {Client} owner
 * @param {Records} records
 */
export async function trialOfRecipes(owner, records) {
  const house = await owner.add('places', { kind: 'house', name: 'House D', walkOrder: 4 });
  const bench = await owner.add('places', { kind: 'bench', name: 'bench 1', parentId: house, walkOrder: 1 });
  /** @type {string[]} */
  const trays = [];
  for (const number of [1, 2, 3, 4, 5]) {
    const filling = { id: newId(), filledOn: '2025-10-10', medium: 'sand:peat 1:1', howCleaned: 'scrubbed, bleach 10 %, rinsed' };
    trays.push(await owner.add('places', { kind: 'tray', name: `tray ${number}`, parentId: bench, walkOrder: number, rows: 8, filling }));
  }
  const halves = JUNIPERS.flatMap(([tree, ...both], at) => both.map(([seen, rooted], arm) => half(tree, arm === 0 ? PLAIN : WITH, Math.floor(at / 2), at % 2 === 0 ? arm : arm + 2, { seen, rooted })));
  const yews = [half('LW-03', 'IBA 8000 ppm, sand:peat 1:1', 3, 0, { n: 16, seen: 4, rooted: 9 }), half('LW-05', PLAIN, 4, 0, { n: 16, on: '2025-10-18', seen: 1, rooted: 3 })];
  for (const one of [...halves, ...yews]) await follow(owner, records, one, { bench, trays });
}

/** @param {string} tree @param {string} recipe @param {number} tray @param {number} row @param {Pick<Half, 'seen' | 'rooted'> & Partial<Half>} more @returns {Half} */
const half = (tree, recipe, tray, row, more) => ({ tree, recipe, tray, rows: String(row + 1), on: '2025-10-11', n: 12, ...more });

/**
 * Stuck, felt in winter, lifted in May; what had no roots was called, and the young plants went to another nursery.
 *
 * @param {Client} owner
 * @param {Records} records
 * @param {Half} half
 * @param {{ bench: string, trays: string[] }} places
 */
async function follow(owner, { donorTrees, recipes }, { tree, recipe, tray, rows, on, n, seen, rooted }, { bench, trays }) {
  const [batchId, toBatchId] = [newId(), newId()];
  await owner.log('desk', [
    { observedOn: on, saying: { kind: 'stuck', batchId, stickingId: newId(), donorTreeId: donorTrees.get(tree), n, placeId: trays[tray], rows, recipeVersionId: recipes.get(recipe) } },
    { observedOn: '2026-02-14', saying: { kind: 'counted', batchId, alive: n - 1, rooted: seen, look: 'tug', dead: [{ n: 1, cause: 'grey fluff', certainty: 'seen' }] } },
    { observedOn: '2026-05-16', saying: { kind: 'counted', batchId, alive: n - 1, rooted, look: 'lifted' } },
    { observedOn: '2026-05-16', saying: { kind: 'lifted', batchId, toBatchId, n: rooted, placeId: bench, container: 'deep cell' } },
    { observedOn: '2026-05-17', saying: { kind: 'called', batchId, n: n - 1 - rooted } },
    { observedOn: '2026-06-20', saying: { kind: 'givenOut', batchId: toBatchId, n: rooted, outside: 'Thornber Rangers' } },
  ]);
}
