import { diceOf, gridOf, kaplanMeier, plantingLayout, stateOccupancy, turnbull, type Between, type Followed, type StateStay } from '@sprigline/domain';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type R, startR } from '../reference/r.ts';
import { emByTheBook, kaplanMeierByTheBook, occupancyByTheBook } from './plain-curves.ts';
import { besides, heapMb, printRatios } from './ratios.ts';

// The numbers at their largest, as ratios to the plainest way of working them out, or to R, in the same run. They need no database.
const dice = diceOf(1934);
const PLANTS = 1_000_000;
const TIMES = 100_000;
type State = 'cutting' | 'rooted' | 'lost';
const STATES: readonly State[] = ['cutting', 'rooted', 'lost'];

/** A million weighted plants in as many groups as there are times, each followed to a time of its own. */
const followed = (times: number): Followed[] => Array.from({ length: times }, (_, at) => ({ until: at + 1, plants: PLANTS / times, happened: dice() < 0.7 }));
const stays = (groups: readonly Followed[]): StateStay<State>[] => groups.map(({ until, plants, happened }) => ({ state: 'cutting', from: 0, until, plants, ...(happened ? { to: dice() < 0.5 ? 'rooted' : 'lost' } : {}) }));

let r: R;
beforeAll(async () => {
  r = await startR();
}, 60_000);
afterAll(() => r.stop());

test('a million plants at a hundred thousand times', async () => {
  const groups = followed(TIMES);
  const ways = stays(groups);
  const rows = [
    await besides('Kaplan-Meier, beside the bare products', async () => void kaplanMeierByTheBook(groups), async () => void kaplanMeier(groups)),
    await besides('Kaplan-Meier, beside R', async () => void (await r.numbers(`local({ n <- ${TIMES}; hit <- runif(n) < 0.7; w <- rep(10, n); t <- 1:n; Y <- rev(cumsum(rev(tapply(w, t, sum)))); N <- tapply(w * hit, t, sum); sum(cumprod(1 - N / Y)) })`)), async () => void kaplanMeier(groups)),
    await besides('Aalen-Johansen with errors, beside shares alone', async () => void occupancyByTheBook(ways), async () => void stateOccupancy(ways, STATES)),
  ];
  printRatios('A million plants, a hundred thousand times', rows);
  expect(rows.every(({ ms }) => ms > 0)).toBe(true);
});

test('memory grows with times, not with plants', () => {
  const grown = (times: number): number => heapMb(() => stateOccupancy(stays(followed(times)), STATES)) + heapMb(() => kaplanMeier(followed(times)));
  const [few, many] = [grown(TIMES / 10), grown(TIMES)];
  console.log(`Memory held: ${few.toFixed(1)} MB for ${TIMES / 10} times, ${many.toFixed(1)} MB for ten times as many (${(many / few).toFixed(1)}x)`);
  expect(many).toBeGreaterThan(0);
});

test('ten thousand plants between looks', async () => {
  const seen: Between[] = Array.from({ length: 10_000 }, () => {
    const time = -Math.log(1 - dice()) * 100;
    return { after: Math.max(0, time - dice() * 60), by: dice() < 0.3 ? Number.POSITIVE_INFINITY : time + dice() * 60, plants: 1 };
  });
  const found = turnbull(seen);
  console.log(`Turnbull: ${found.regions.length} regions after ${found.iterations} rounds, ${found.gap.toExponential(1)} from the best; by EM alone after 500 rounds still ${emByTheBook(seen, 500).toExponential(1)}`);
  printRatios('Ten thousand plants', [await besides('Turnbull, beside 500 rounds of EM', async () => void emByTheBook(seen, 500), async () => void turnbull(seen))]);
  expect(found.isConverged).toBe(true);
});

test('forty donor trees on 60 x 60', async () => {
  const plants = new Map(Array.from({ length: 40 }, (_, at) => [`CR-${at + 1}`, 90]));
  const positions = gridOf(60, 60);
  const { nearest, pairs, bound } = plantingLayout(plants, positions, diceOf(7));
  // By chance: what a crate mixed well comes to.
  const shuffled = [...plants.keys()].flatMap((donor) => Array.from({ length: 90 }, () => ({ donor, by: dice() }))).sort((one, other) => one.by - other.by);
  const beside = shuffled.filter(({ donor }, at) => at % 60 !== 59 && shuffled[at + 1]?.donor === donor).length;
  console.log(`Layout: copies at least ${nearest.toFixed(3)} steps apart (${pairs} pairs as near), no layout beyond ${bound.toFixed(3)}: ${((nearest / bound) * 100).toFixed(0)} %; mixed by chance ${beside} pairs stand side by side`);
  const quarter = new Map([...plants.keys()].map((donor, at) => [donor, at < 20 ? 22 : 23]));
  const rows = [await besides('60 x 60, beside 30 x 30', async () => void plantingLayout(quarter, gridOf(30, 30), diceOf(7)), async () => void plantingLayout(plants, positions, diceOf(7)))];
  printRatios('Layouts', rows);
  expect(nearest).toBeGreaterThan(6);
});
