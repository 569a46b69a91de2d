import type { BatchIdentity, Books, Flag, Movement, Stay } from '@sprigline/domain';
import type pg from 'pg';

/** The identity and the books of a batch as the tables hold them, in the shape of the domain. */
export async function booksInDatabase(sql: pg.Client, batchId: string): Promise<{ batch: BatchIdentity; books: Books } | undefined> {
  const rows = async <R extends pg.QueryResultRow>(select: string): Promise<R[]> =>
    (await sql.query<{ all: R[] }>(`SELECT json_strip_nulls(coalesce(json_agg(x), '[]')) AS all FROM (${select}) x`, [batchId])).rows[0]?.all ?? [];
  const [batch] = await rows<BatchIdentity & pg.QueryResultRow>(
    `SELECT id, stage, sticking_id AS "stickingId", opening_entry_id AS "openingEntryId", opening_place_id AS "openingPlaceId" FROM batch WHERE id = $1`,
  );
  if (!batch) return undefined;

  const [state] = await rows<StateRow & pg.QueryResultRow>('SELECT * FROM batch_state WHERE batch_id = $1');
  if (!state) throw new Error('a batch without a state');
  const books: Books = {
    balance: state.balance,
    movements: await rows<Movement & pg.QueryResultRow>(
      `SELECT entry_id AS "entryId", day, effect, n, cause, to_stage AS "toStage", undoes_id AS undoes, last_seen AS "lastSeen"
       FROM movement WHERE batch_id = $1 ORDER BY seq`,
    ),
    stays: await rows<Stay & pg.QueryResultRow>(`SELECT place_id AS "placeId", from_day AS from, entry_id AS "entryId" FROM stay WHERE batch_id = $1 ORDER BY seq`),
    rooted: { now: state.rooted_now, ever: state.rooted_ever },
    lastSeen: state.last_seen_on ? { day: state.last_seen_on, look: state.last_look } : undefined,
    looks: { strongOn: state.strong_look_on, sampledOn: state.sampled_on, lookedOverOn: state.looked_over_on },
    notFound: state.not_found,
    heldBy: state.held_by,
    unconfirmed: state.unconfirmed,
    calledOn: state.called_on,
    flags: await rows<Flag & pg.QueryResultRow>(`SELECT entry_id AS "entryId", code, day, n FROM flag WHERE batch_id = $1`),
  };
  return { batch, books };
}

interface StateRow {
  balance: number;
  rooted_now?: number;
  rooted_ever: number;
  last_seen_on?: string;
  last_look: 'look' | 'tug' | 'lifted';
  not_found: number;
  held_by: string[];
  unconfirmed: boolean;
  called_on?: string;
  strong_look_on?: string;
  sampled_on?: string;
  looked_over_on?: string;
}
