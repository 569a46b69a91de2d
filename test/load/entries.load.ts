import { expect, test } from 'vitest';
import { Desk, nursery } from '../support/nursery.ts';
import { newId } from '../support/people.ts';
import { bareEntries } from './bare-entries.ts';
import { largeProgramme, SIZES } from './large-programme.ts';
import { besides, printRatios } from './ratios.ts';

// What writing costs, as a whole request, beside a bare transaction in tables that hold a large programme already. The
// bars: one entry three times the bare one at most, five hundred in one request twice; printed, nothing asserted.
const [TRAYS, LOOKS, SOME] = [500, 20, 20];
const SIZE = process.env['LOAD_SIZE'] ?? '';

test.each(Object.entries(SIZES).filter(([name]) => name.startsWith(SIZE)))('writing beside %s', async (name, size) => {
  const large = await largeProgramme(size);
  const desk = new Desk(large.api, await nursery(large.api, `beside-${newId().slice(0, 18)}`));
  const [trays, others] = [await stuck(desk), await stuck(desk)];
  const nextDay = daysFrom('2025-10-03');
  const lookAt = (batchIds: readonly string[], day = nextDay()) => written(desk, batchIds.map((batchId) => desk.entry(day, { kind: 'counted', batchId, alive: 1, look: 'look' })));
  for (let at = 0; at < LOOKS; at += 1) await lookAt(trays);

  const bare = await bareEntries(large, desk.nursery.programmeId, others);
  const few = trays.slice(0, SOME);
  const rows = [
    await besides(`${SOME} times one entry`, async () => { for (const _ of few) await bare.write(1); }, async () => { for (const tray of few) await lookAt([tray]); }),
    await besides(`${TRAYS} trays in one request`, () => bare.write(TRAYS), () => lookAt(trays)),
    await besides(`${SOME} trays, ${TRAYS} entries in one request`, () => bare.write(TRAYS), () => lookAt(trays.map((_, at) => few[at % SOME] ?? ''))),
  ];
  await bare.end();
  printRatios(`${name}, writing beside a bare transaction`, rows);
  expect(rows.every(({ ms }) => ms > 0)).toBe(true);
});

/** Trays of one cutting each. */
async function stuck(desk: Desk): Promise<string[]> {
  const { bundles, trays } = desk.nursery;
  const ids = Array.from({ length: TRAYS }, newId);
  await written(desk, ids.map((batchId) => desk.entry('2025-10-02', { kind: 'stuck', batchId, stickingId: newId(), n: 1, placeId: trays[0], bundleId: bundles[0] })));
  return ids;
}

async function written(desk: Desk, entries: readonly object[]): Promise<void> {
  expect(new Set((await desk.write(entries)).map(({ status }) => status))).toEqual(new Set(['written']));
}

/** Each time it is asked, the day after. */
function daysFrom(first: string): () => string {
  let day = Date.parse(first);
  return () => new Date((day += 86_400_000)).toISOString().slice(0, 10);
}
