import type pg from 'pg';
import type { Size } from './fill-programme.ts';
import { idAt } from './ids.ts';

const TOLD = `delivered_by, door, written_at, received_at, received_on`;
const toldOn = (day: string): string => `'load', 'desk', ${day}, ${day}, ${day}`;

/** The entries that the books stand on, and counts week by week that changed nothing. */
export async function fillEntries(sql: pg.Client, programmeId: string, { looks }: Size): Promise<void> {
  const entries = (select: { id: string; kind: string; day: string; body: string; from: string }): Promise<unknown> =>
    sql.query(`INSERT INTO entry (programme_id, id, kind, observed_on, body, ${TOLD})
      SELECT $1::uuid, ${select.id}, ${select.kind}, ${select.day}, jsonb_build_object('kind', ${select.kind}, ${select.body}), ${toldOn(select.day)} FROM ${select.from}`, [programmeId]);
  const touches = (batchId: string, entryId: string, from: string): Promise<unknown> =>
    sql.query(`INSERT INTO entry_touch (programme_id, batch_id, entry_id) SELECT $1::uuid, ${batchId}, ${entryId} FROM ${from}`, [programmeId]);
  const [batch, opening, death, mixing] = [idAt('batch', 'b'), idAt('opening', 'b'), idAt('death', 'b'), idAt('mixing', 'm')];

  await entries({ id: opening, kind: `(ARRAY['stuck', 'lifted', 'potted', 'planted'])[at + 1]`, day: 'opened_on', body: `'batchId', ${batch}, 'n', came`, from: 'fate' });
  await touches(batch, opening, 'fate');
  await touches(idAt('batch', 'b - 1'), opening, 'fate WHERE at > 0');
  await entries({ id: death, kind: `'died'::text`, day: 'opened_on + 30', body: `'batchId', ${batch}, 'n', died, 'cause', 'rot'`, from: 'fate WHERE died > 0' });
  await touches(batch, death, 'fate WHERE died > 0');
  await entries({ id: mixing, kind: `'mixed'::text`, day: 'day', body: `'batchId', ${idAt('mixed', 'm')}, 'n', n`, from: 'mixing' });
  await touches(idAt('mixed', 'm'), mixing, 'mixing');
  await touches(batch, idAt('mixing', 'n / 120'), 'fate WHERE mixed > 0');

  // Looks are at the cuttings; the last ones told of roots where any went on.
  const counts = `fate CROSS JOIN generate_series(0, ${looks - 1}) look WHERE at = 0 AND opened_on + 35 + look * 6 <= current_date`;
  const count = idAt('count', `n::bigint * ${looks} + look`);
  await entries({
    id: count, kind: `'counted'::text`, day: 'opened_on + 35 + look * 6', from: counts,
    body: `'batchId', ${batch}, 'alive', came - died, 'look', 'look', 'rooted', CASE WHEN look >= ${looks - 2} THEN rooted END`,
  });
  await touches(batch, count, counts);
}
