import { readFile } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import { v7 as newId } from 'uuid';
import { SEED } from './read-records.mjs';

/**
 * The group's log sheet of two seasons, brought as a coordinator would who finds every guess right.
 *
 * @param {import('./client.mjs').Client} owner
 */
export async function bringSheet(owner) {
  const sheet = await readFile(new URL('log-sheet.csv', SEED));
  const id = newId();
  const { guess } = await owner.send('POST', `${owner.of('imports')}?id=${id}&fileName=log-sheet-two-seasons.csv`, sheet);
  await owner.send('PUT', owner.of(`imports/${id}/plan`), {
    columns: guess.columns,
    acts: Object.fromEntries(guess.words.map((/** @type {{ word: string, act: string }} */ { word, act }) => [word, act])),
    dayOrder: guess.dayOrders[0],
    spellings: Object.fromEntries(Object.entries(guess.spellings).map(([field, groups]) => [field, joined(/** @type {Group[]} */ (groups))])),
  });
  await owner.send('POST', owner.of(`imports/${id}/writing`), {});
  for (;;) {
    const { state, failure } = await owner.send('GET', owner.of(`imports/${id}`));
    if (state === 'written') return;
    if (state === 'failed') throw new Error(`The demo was not loaded: its log sheet was refused, ${failure}`);
    await pause(100);
  }
}

/** @typedef {{ keep: string, sameApartFromCase: boolean, spellings: { seen: string }[] }} Group */

/** Apart by spaces and capitals only, as the screen has them ticked. @param {Group[]} groups */
const joined = (groups) => Object.fromEntries(groups.filter(({ sameApartFromCase }) => sameApartFromCase).flatMap(({ keep, spellings }) => spellings.map(({ seen }) => [seen.trim().toLowerCase(), keep])));
