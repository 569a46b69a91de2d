import { URLSearchParams } from 'node:url';
import sharp from 'sharp';
import { v7 as newId } from 'uuid';

/** @typedef {import('./client.mjs').Client} Client */
/** @typedef {import('./records.mjs').Records} Records */

const DRAWN = 'Drawn for the demo, not taken.';

/**
 * Drawings in the place of photos: a batch on two days, its tray from above, and its donor tree.
 *
 * @param {Client} owner
 * @param {Records} records
 */
export async function drawPhotos(owner, { donorTrees }) {
  const { id: batchId } = await owner.send('GET', owner.of('labels/C001'));
  const { place } = await owner.send('GET', owner.of(`batches/${batchId}`));
  const donorTreeId = String(donorTrees.get('CR-01'));
  const [noteId, brownId] = await owner.log('desk', [
    { observedOn: '2026-10-18', saying: { kind: 'noted', batchId, text: `Just stuck, all upright. ${DRAWN}` } },
    { observedOn: '2026-11-15', saying: { kind: 'noted', batchId, text: `Two tips turn brown. ${DRAWN}` } },
  ]);
  const [treeNote] = await owner.log('desk', [{ observedOn: '2026-10-11', saying: { kind: 'noted', donorTreeId, text: `The crown after the cut. ${DRAWN}` } }]);
  await send(owner, { batchId, takenOn: '2026-10-18', noteId: String(noteId) }, tray(2, 9));
  await send(owner, { batchId, takenOn: '2026-11-15', noteId: String(brownId) }, tray(2, 9, [4, 13]));
  const portrait = await send(owner, { placeId: place.id, takenOn: '2026-10-18', kind: 'portrait' }, tray(8, 9));
  await owner.send('PUT', owner.of(`photos/${portrait}/frame`), { left: 5, top: 7, right: 95, bottom: 93, labelSide: 'top' });
  await send(owner, { donorTreeId, takenOn: '2026-10-11', noteId: String(treeNote), showsWhere: 'no' }, tree(0));
  await send(owner, { donorTreeId, takenOn: '2026-10-11', showsWhere: 'yes' }, tree(1));
}

/** @param {Client} owner @param {Record<string, string>} told @param {string} drawing @returns {Promise<string>} its id */
async function send(owner, told, drawing) {
  const [id, picture] = [newId(), await sharp(Buffer.from(drawing)).jpeg({ quality: 90 }).toBuffer()];
  await owner.send('PUT', owner.of(`photos/${id}?${new URLSearchParams(told)}`), picture);
  return id;
}

/** @param {string} parts @param {string} ground */
const sheet = (parts, ground) => `<svg xmlns="http://www.w3.org/2000/svg" width="960" height="720" viewBox="0 0 960 720"><rect width="960" height="720" fill="${ground}"/>${parts}</svg>`;

/**
 * Rows of cuttings from above.
 *
 * @param {number} rows
 * @param {number} perRow
 * @param {readonly number[]} brown which of them, from 0
 */
function tray(rows, perRow, brown = []) {
  const [wide, high] = [860 / perRow, 620 / rows];
  const size = Math.min(wide, high) / 2.6;
  const sprigs = Array.from({ length: rows * perRow }, (_, at) => {
    const [x, y] = [50 + wide * ((at % perRow) + 0.5), 50 + high * (Math.floor(at / perRow) + 0.5)];
    const needles = Array.from({ length: 9 }, (__, needle) => `<path d="M0 0 0 ${-size}" transform="rotate(${needle * 40 + at * 17})"/>`).join('');
    return `<g transform="translate(${x} ${y})" stroke="${brown.includes(at) ? '#8a5a2b' : '#6f9a57'}">${needles}</g>`;
  }).join('');
  return sheet(`<rect x="30" y="30" width="900" height="660" rx="18" fill="#4a3b2d" stroke="#26221d" stroke-width="20"/><g stroke-width="9" stroke-linecap="round">${sprigs}</g>`, '#8d9488');
}

/**
 * A juniper: its crown alone, or on its ridge with a cairn beside it.
 *
 * @param {0 | 1} isFar
 */
function tree(isFar) {
  const crown = Array.from({ length: 26 }, (_, at) => `<ellipse cx="${480 + ((at * 73) % 300) - 150}" cy="${170 + at * 15}" rx="${54 + at * 3}" ry="62" fill="${at % 2 === 0 ? '#3f6449' : '#527a58'}"/>`).join('');
  if (!isFar) return sheet(`${crown}<path d="M480 720V600" stroke="#54402e" stroke-width="46"/>`, '#cfd8d6');
  const ridge = '<path d="M0 560 260 420 520 500 960 330V720H0Z" fill="#8b9377"/><path d="M700 440h120l-24-50h-70Z" fill="#6d6a63"/>';
  return sheet(`${ridge}<g transform="translate(150 250) scale(.42)">${crown}</g>`, '#c4d2d8');
}
