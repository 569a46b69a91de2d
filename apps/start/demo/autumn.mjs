import { v7 as newId } from 'uuid';

/** @typedef {import('./client.mjs').Client} Client */
/** @typedef {import('./records.mjs').Records} Records */
/** @typedef {{ id: string, balance: number, unconfirmed: boolean, place: { id: string, name: string }, stand?: { name: string }, donorTree?: { id: string } }} Alive */

/**
 * The autumn of 2026, after the sheet: a sticking night, rounds by phone that came late and
 * crossed each other, a failed timer, a tray held, two trays that lost their labels, a check at
 * the site. It leaves something to decide on the review list, and cuttings still to be stuck.
 *
 * @param {Client} owner
 * @param {Records} records
 */
export async function workTheAutumn(owner, records) {
  await stickingNight(owner, records);
  await crossedRounds(owner);
  await troubleAtTheBench(owner);
  await checkAtTheSite(owner);
  await labelsLost(owner);
  await pottedUnderGlass(owner);
  // A sheet for the next potting day, printed and not typed back yet.
  await owner.add('work-lists', { kind: 'pottingUp', asked: {} });
  // Labels for what will be stuck and potted next: on nothing yet.
  await owner.add('label-rolls', { name: 'Potting shed, first roll', n: 24 });
}

/** @param {Client} owner @param {Records} records */
async function stickingNight(owner, { bundles, recipes }) {
  const house = await owner.add('places', { kind: 'house', name: 'House C', walkOrder: 3 });
  const bench = await owner.add('places', { kind: 'bench', name: 'bench 1', parentId: house, walkOrder: 1 });
  /** @type {string[]} */
  const trays = [];
  for (const number of [1, 2, 3]) {
    const filling = { id: newId(), filledOn: '2026-10-18', medium: 'sand:peat 1:1', howCleaned: 'scrubbed, bleach 10 %, rinsed' };
    trays.push(await owner.add('places', { kind: 'tray', name: `tray ${number}`, parentId: bench, walkOrder: number, rows: 8, filling }));
  }
  const there = (await owner.send('GET', owner.of('people'))).slice(0, 3).map((/** @type {{ id: string }} */ { id }) => id);
  const workday = await owner.add('workdays', { day: '2026-10-18', placeId: house, tasks: 'Sticking night: juniper from Corran Ridge', personIds: there, others: 4, children: 3, hours: 3.5 });
  const plan = /** @type {const} */ ([
    ['CR-01', 18, 0, '1-2', 'IBA 3000 ppm, sand:peat 1:1'], ['CR-01', 18, 1, '1-2', 'IBA 8000 ppm, sand:peat 1:1'],
    ['CR-05', 30, 0, '3-5', 'IBA 3000 ppm, sand:peat 1:1'], ['CR-13', 24, 1, '3-4', 'IBA 8000 ppm, sand:peat 1:1'],
    ['CR-13', 24, 2, '1-2', 'no hormone, sand:peat 1:1'], ['CR-08', 28, 2, '3-5', 'no hormone, sand:peat 1:1'],
  ]);
  await owner.log('desk', plan.map(([label, n, tray, rows, recipe], at) => ({
    observedOn: '2026-10-18', workdayId: workday, line: at + 1,
    saying: {
      kind: 'stuck', batchId: newId(), stickingId: newId(), bundleId: bundles.get(label), n, placeId: trays[tray], rows,
      recipeVersionId: recipes.get(recipe), label: `C${String(at + 1).padStart(3, '0')}`,
      damaged: label === 'CR-05' ? [{ n: 2, how: 'torn' }] : [],
    },
  })));
}

/** Two people counted one tray on one day; one of them sent it a week later. @param {Client} owner */
async function crossedRounds(owner) {
  const [first, second, third] = await batchesAlive(owner, 'liner');
  await owner.log('outbox', [
    { observedOn: '2026-11-08', saying: { kind: 'counted', batchId: first.id, alive: first.balance, look: 'look' } },
    { observedOn: '2026-11-08', saying: { kind: 'counted', batchId: first.id, alive: Math.max(first.balance - 1, 0), look: 'tug' } },
    { observedOn: '2026-11-08', saying: { kind: 'counted', batchId: second.id, alive: second.balance + 2, look: 'look' } },
  ]);
  await owner.log('outbox', [{ observedOn: '2026-11-02', saying: { kind: 'died', batchId: third.id, n: third.balance + 1, cause: 'grey fluff' } }]);
}

/** @param {Client} owner */
async function troubleAtTheBench(owner) {
  const [potted, other] = await batchesAlive(owner, 'potted');
  await owner.log('desk', [
    { observedOn: '2026-11-10', saying: { kind: 'incident', placeId: potted.place.id, what: 'timerFailed', severity: 'serious', lastGoodOn: '2026-11-08', untilDay: '2026-11-10', detail: 'Mist timer stuck; the air was dry for two nights.' } },
    { observedOn: '2026-11-11', saying: { kind: 'held', batchId: other.id, reason: 'Brown roots seen at the pot wall; sample sent.', sample: 'H-07' } },
    { observedOn: '2026-11-14', saying: { kind: 'noted', batchId: potted.id, lookedOver: true } },
  ]);
}

/** Two small trays of one stand fell off the bench: which plant is of which tree, nobody knows any more. @param {Client} owner */
async function labelsLost(owner) {
  const small = (await batchesAlive(owner, 'liner')).slice(3).filter(({ balance, donorTree }) => balance <= 9 && donorTree);
  const one = small.find((each) => beside(each, small));
  const other = one && beside(one, small);
  if (!one || !other) throw new Error('The demo was not loaded: no two small batches of one stand are there to be mixed.');
  const parts = [one, other].map(({ id, balance }) => ({ batchId: id, n: balance }));
  const mixture = newId();
  await owner.log('desk', [
    { observedOn: '2026-11-19', note: 'Trays knocked off the bench, tags on the floor.', saying: { kind: 'mixed', toBatchId: mixture, placeId: one.place.id, parts, label: 'M001' } },
    { observedOn: '2026-11-20', saying: { kind: 'counted', batchId: mixture, alive: one.balance + other.balance, look: 'look' } },
  ]);
}

/** Young plants potted up in the house, where it is warm; they have to be hardened off before they go out. @param {Client} owner */
async function pottedUnderGlass(owner) {
  const house = (await owner.send('GET', owner.of('places'))).find((/** @type {{ name: string }} */ { name }) => name === 'House C').id;
  const bench = await owner.add('places', { kind: 'bench', name: 'bench 2', parentId: house, walkOrder: 2 });
  const strong = (await batchesAlive(owner, 'liner')).slice(3).filter(({ donorTree }) => donorTree).toSorted((a, b) => b.balance - a.balance).slice(0, 5);
  await owner.log('desk', strong.map(({ id, balance }, at) => ({
    observedOn: '2026-11-21',
    saying: { kind: 'potted', batchId: id, toBatchId: newId(), n: Math.ceil(balance / 2), placeId: bench, container: '9 cm pot', medium: 'bark:grit 3:1', label: `G${String(at + 1).padStart(3, '0')}` },
  })));
}

/** Another batch of that stand, of another tree. @param {Alive} one @param {readonly Alive[]} all */
const beside = (one, all) => all.find(({ stand, donorTree }) => stand?.name === one.stand?.name && donorTree?.id !== one.donorTree?.id);

/** The last rounds of autumn: potted plants were counted, the others looked over with nothing to report. One frame waits since early November. @param {Client} owner */
export async function walkThePlaces(owner) {
  const [cuttings, liners, potted] = [await batchesAlive(owner, 'cutting'), await batchesAlive(owner, 'liner'), await batchesAlive(owner, 'potted')];
  const waiting = liners.find(({ place }) => place.name === 'Frame 3')?.place.id;
  await owner.log('outbox', [
    ...[...cuttings, ...liners].map(({ id, place }) => ({ observedOn: place.id === waiting ? '2026-11-05' : '2026-11-21', saying: { kind: 'noted', batchId: id, lookedOver: true } })),
    // What partners were given is theirs to count.
    ...potted.filter(({ unconfirmed }) => !unconfirmed).map(({ id, balance }) => ({ observedOn: '2026-11-22', saying: { kind: 'counted', batchId: id, alive: balance, look: 'look' } })),
  ]);
}

/** @param {Client} owner */
async function checkAtTheSite(owner) {
  const planted = await batchesAlive(owner, 'planted');
  const seen = planted.filter(({ balance }) => balance > 3).slice(0, 4);
  await owner.log('desk', seen.map(({ id, balance }, at) => ({
    observedOn: '2026-10-24',
    saying: { kind: 'checked', batchId: id, alive: balance - 2, dead: at % 2 === 0 ? [{ n: 1, cause: 'bark stripped' }] : [], notFound: at % 2 === 0 ? 1 : 2, notLooked: 0 },
  })));
}

/**
 * @param {Client} owner
 * @param {'cutting' | 'liner' | 'potted' | 'planted'} stage
 * @returns {Promise<[Alive, Alive, Alive, ...Alive[]]>} the sheet leaves dozens at every stage
 */
async function batchesAlive(owner, stage) {
  return owner.send('GET', `${owner.of('batches')}?stage=${stage}&state=alive&limit=200`);
}
