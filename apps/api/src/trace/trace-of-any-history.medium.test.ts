// Whatever happens on a bench, the trace forth of every forebear must hold the batch, and the answer of the database
// must be the one that a plain walk over the booked entries gives.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Trace } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

interface Edge { readonly from: string; readonly to: string; readonly day: string }

const ACTS = ['lifted', 'moved', 'joined', 'mixed', 'potted', 'cutAgain', 'withdrawn'] as const;
const act = fc.record({ what: fc.constantFrom(...ACTS), one: fc.nat(30), other: fc.nat(30), day: fc.integer({ min: 1, max: 28 }) });
const dayOf = (day: number): string => `2026-03-${String(day).padStart(2, '0')}`;

/** Writes what was drawn by the door of phones, which takes what does not add up; answers the ids of all batches. */
async function lived(acts: readonly { what: (typeof ACTS)[number]; one: number; other: number; day: number }[]): Promise<string[]> {
  const batches = [(await desk.stick(50)).batchId, (await desk.stick(50)).batchId, (await desk.stick(50, { bundleId: place.bundles[1] })).batchId];
  const written: string[] = [];
  for (const { what, one, other, day } of acts) {
    const [batchId = '', second = ''] = [batches[one % batches.length], batches[other % batches.length]];
    const toBatchId = newId();
    const opens = !['joined', 'withdrawn'].includes(what);
    const earlier = written[one % Math.max(written.length, 1)] ?? '';
    const sayings = {
      lifted: { kind: 'lifted', batchId, toBatchId, n: 3, placeId: place.bench }, potted: { kind: 'potted', batchId, toBatchId, n: 2, placeId: place.house },
      moved: { kind: 'moved', batchId, toBatchId, n: 2, placeId: place.trays[1] }, joined: { kind: 'moved', batchId, toBatchId: second, n: 1, placeId: place.trays[1] },
      mixed: { kind: 'mixed', toBatchId, placeId: place.house, parts: [{ batchId, n: 1 }, { batchId: second, n: 1 }] },
      cutAgain: { kind: 'stuck', batchId: toBatchId, stickingId: newId(), n: 4, placeId: place.trays[2], fromBatchId: batchId },
      withdrawn: { kind: 'withdrawn', entryId: earlier, sawVersion: earlier, reason: 'a slip' },
    };
    const entry = desk.entry(dayOf(day), sayings[what]);
    const { status, body } = await desk.post('entries', { door: 'outbox', entries: [entry] });
    if (status !== 200 || body.entries[0].status !== 'written') continue;
    if (opens) batches.push(toBatchId);
    written.push(entry.id);
  }
  return batches;
}

/** Who passed plants to whom, read off the books entry by entry. */
const edges = (): Promise<Edge[]> => asOwner(api, async (sql) => {
  await sql.query(`SELECT set_config('app.programme_id', $1, false)`, [place.programmeId]);
  const { rows: booked } = await sql.query<{ batch_id: string; entry_id: string; effect: string; day: string }>(
    `SELECT batch_id, entry_id, effect, day::text FROM movement WHERE effect ~ '^(wentOn|wentIn|split|mixed|restuck|identified|given)' OR effect = 'stuck'`);
  const passed = booked.filter(({ effect }) => /Out$|wentOn|Across/.test(effect)).flatMap((out) =>
    booked.filter((come) => come.entry_id === out.entry_id && come.batch_id !== out.batch_id && /In$/.test(come.effect)).map((come) => ({ from: out.batch_id, to: come.batch_id, day: out.day })));
  const { rows: cut } = await sql.query<{ id: string; from_batch_id: string }>(`SELECT b.id, s.from_batch_id FROM sticking s JOIN batch b ON b.opening_entry_id = s.opening_entry_id WHERE s.from_batch_id IS NOT NULL`);
  // The line outlives a withdrawn opening: plants that nobody's entry brings in any more are still of the batch it was opened from.
  const { rows: orphans } = await sql.query<{ from: string; to: string; day: string }>(`SELECT parent_id AS "from", id AS "to", opened_on::text AS day FROM batch b WHERE parent_id IS NOT NULL
    AND EXISTS (SELECT FROM movement m WHERE m.batch_id = b.id) AND NOT EXISTS (SELECT FROM movement m WHERE m.batch_id = b.id AND (m.effect ~ 'In$' OR m.effect IN ('stuck', 'received')))`);
  return [...passed, ...orphans, ...booked.filter(({ effect }) => effect === 'stuck').flatMap((come) => cut.filter(({ id }) => id === come.batch_id).map(({ from_batch_id: from }) => ({ from, to: come.batch_id, day: come.day })))];
});

/** All that plants of a batch came to, step by step, never back in time. */
function forth(start: string, all: readonly Edge[]): Set<string> {
  const earliest = new Map([[start, '']]);
  for (let isNew = true; isNew; ) {
    isNew = false;
    for (const { from, to, day } of all) {
      const since = earliest.get(from);
      if (since === undefined || day < since || (earliest.get(to) ?? '9') <= day) continue;
      earliest.set(to, day);
      isNew = true;
    }
  }
  earliest.delete(start);
  return new Set(earliest.keys());
}

test('every forebear leads to the batch, and the database walks as a plain walk does', async () => {
  await fc.assert(fc.asyncProperty(fc.array(act, { minLength: 6, maxLength: 14 }), async (acts) => {
    const batches = await lived(acts);
    const all = await edges();
    const traces = new Map<string, Trace>();
    for (const id of batches) traces.set(id, Trace.parse((await desk.get(`trace?batchId=${id}`)).body));
    for (const [id, { batches: line }] of traces) {
      expect(new Set(line.filter(({ way, id: other }) => way === 'to' && other !== id).map(({ id: other }) => other))).toEqual(forth(id, all));
      for (const forebear of line.filter(({ way }) => way === 'from')) {
        expect(traces.get(forebear.id)?.batches.map((batch) => batch.id)).toContain(id);
      }
    }
  }), { numRuns: 4, endOnFailure: true });
}, 240_000);
