import { beginFor } from '../database/context.ts';
import { lockAll, projectedOf } from '../entry/projected.queries.ts';
import { programmesOf, withConnection } from './keeper.ts';
import { STAND_PARTNERS } from '../entry/stand-partners.queries.ts';

/** What follows from the entries, and can be thrown away. Reviews are decisions of people, and stay. */
const PROJECTIONS = ['movement', 'stay', 'flag', 'tally', 'batch_partner', 'batch_state'] as const;

/**
 * Throws away what follows from the entries and works it out anew, programme by programme,
 * each in one transaction. Logging in that programme waits meanwhile.
 *
 * @param urls `keeper` to know which programmes there are, `app` to write as the application does
 * @returns how many batches were replayed
 */
export async function rebuildProjections(urls: { readonly app: string; readonly keeper: string }): Promise<number> {
  let batches = 0;
  for (const programmeId of await programmesOf(urls.keeper)) {
    batches += await withConnection(urls.app, beginFor({ programmeId, seesExact: false }), async (sql) => {
      await lockAll(sql, programmeId);
      for (const table of PROJECTIONS) await sql.rows(`DELETE FROM ${table} WHERE programme_id = $1`, [programmeId]);
      await sql.rows(`INSERT INTO batch_partner (programme_id, batch_id, partner_id, relation) SELECT $1, * FROM (${STAND_PARTNERS}) AS stand`, [programmeId]);
      let replayed = 0;
      for await (const projected of projectedOf(sql, programmeId)) {
        await projected.write(sql);
        replayed += projected.rows.length;
      }
      return replayed;
    });
  }
  return batches;
}
