/**
 * Effects by which plants leave a batch for another one, and come into one from another. One entry books both.
 * `movement_out_of_a_batch` and its three sisters index the steps of just these.
 */
const LEAVES = `('wentOn', 'splitOut', 'restuckOut', 'mixedOut', 'identifiedOut', 'givenAcross')`;
const ARRIVES = `('wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn')`;

/** So many batches are walked from at most, and so many rows are looked at. */
export const MOST_SEEDS = 20_000;

/**
 * Plants left `${leaving}` on a day; where to. What a withdrawn entry said has booked nothing,
 * so only what stands in the books is followed.
 *
 * A batch whose opening was withdrawn, and that has plants all the same, is still of the line
 * that it was opened in.
 */
const ONWARD = (id: string, since: string): string => `
    SELECT i.batch_id AS id, o.day FROM movement o
    JOIN movement i ON i.programme_id = $1 AND i.entry_id = o.entry_id AND i.batch_id <> o.batch_id AND i.effect IN ${ARRIVES}
    WHERE o.programme_id = $1 AND o.batch_id = ${id} AND o.effect IN ${LEAVES} AND o.day >= ${since}
    UNION ALL
    SELECT b.id, m.day FROM sticking s
    JOIN batch b ON b.programme_id = $1 AND b.sticking_id = s.id AND b.opening_entry_id = s.opening_entry_id
    JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'stuck'
    WHERE s.programme_id = $1 AND s.from_batch_id = ${id} AND m.day >= ${since}
    UNION ALL
    SELECT b.id, b.opened_on FROM batch b
    WHERE b.programme_id = $1 AND b.parent_id = ${id} AND b.opened_on >= ${since} AND ${IS_ORPHAN('b')}`;

/** Where plants of a batch came from, until a day. */
const BACK = (id: string, until: string): string => `
    SELECT o.batch_id AS id, i.day FROM movement i
    JOIN movement o ON o.programme_id = $1 AND o.entry_id = i.entry_id AND o.batch_id <> i.batch_id AND o.effect IN ${LEAVES}
    WHERE i.programme_id = $1 AND i.batch_id = ${id} AND i.effect IN ${ARRIVES} AND i.day <= ${until}
    UNION ALL
    SELECT up.id, up.day FROM batch b CROSS JOIN LATERAL (
      SELECT s.from_batch_id AS id, m.day FROM sticking s
      JOIN movement m ON m.programme_id = $1 AND m.batch_id = b.id AND m.effect = 'stuck'
      WHERE s.programme_id = $1 AND s.id = b.sticking_id AND s.opening_entry_id = b.opening_entry_id AND s.from_batch_id IS NOT NULL AND m.day <= ${until}
      UNION ALL
      SELECT b.parent_id, b.opened_on WHERE b.parent_id IS NOT NULL AND b.opened_on <= ${until} AND ${IS_ORPHAN('b')}) up
    WHERE b.programme_id = $1 AND b.id = ${id}`;

/** There are plants, and no entry that stands says from where: so they were found. Few ever are, which makes that the quick question. */
function IS_ORPHAN(b: string): string {
  return `EXISTS (SELECT FROM movement h WHERE h.programme_id = $1 AND h.batch_id = ${b}.id AND h.effect = 'found')
      AND NOT EXISTS (SELECT FROM movement h WHERE h.programme_id = $1 AND h.batch_id = ${b}.id AND h.effect IN ('stuck', 'received', 'wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn'))`;
}

/** How near a batch is to what was asked about: itself, plants of it went there, plants came from there. */
const RANK = { itself: 0, to: 1, from: 2 } as const;

/** The way of a batch, from its rank. */
export const WAY = (rank: string): string => `CASE ${rank} ${Object.entries(RANK).map(([way, n]) => `WHEN ${n} THEN '${way}'`).join(' ')} END`;

/** Batches that led to what was asked about, and no more, have a rank of their own. */
export const CAME_BEFORE = (rank: string): string => `${rank} <> ${RANK.to}`;

/**
 * CTEs that follow the plants of `seed` both ways, and end in `line (id, rank, perhaps, since)`.
 *
 * Days matter: what a batch gave away before plants came into it can't have been those plants.
 * Acts of one day may have come in either order, so they count. A batch and a day are walked
 * from once, so that plants carried to and fro end somewhere.
 */
export const WALK = `
  forth AS (
    SELECT id, since, perhaps FROM seed
    UNION
    SELECT e.id, e.day, f.perhaps FROM forth f, LATERAL (${ONWARD('f.id', 'f.since')}) e),
  back AS (
    SELECT id, until, perhaps FROM seed
    UNION
    SELECT e.id, e.day, f.perhaps FROM back f, LATERAL (${BACK('f.id', 'f.until')}) e),
  walked AS (
    SELECT id, ${RANK.itself} AS rank, perhaps, since FROM seed
    UNION ALL SELECT id, ${RANK.to}, perhaps, since FROM forth
    UNION ALL SELECT id, ${RANK.from}, perhaps, NULL FROM back),
  line AS (SELECT id, min(rank) AS rank, bool_and(perhaps) AS perhaps, min(since) AS since FROM walked GROUP BY id)`;

/** Where plants of a batch of the line came from, batch by batch, as JSON. */
export const CAME_FROM = `(SELECT coalesce(json_agg(json_build_object('id', x.id, 'label', x.label, 'n', x.n, 'day', x.day) ORDER BY x.day, x.label), '[]') FROM (
    SELECT o.batch_id AS id, min(o.day) AS day, sum(o.n)::int AS n,
      (SELECT l.code FROM label l WHERE l.programme_id = $1 AND l.batch_id = o.batch_id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label
    FROM movement i JOIN LATERAL (
      SELECT o.batch_id, o.day, o.n FROM movement o WHERE o.programme_id = $1 AND o.entry_id = i.entry_id AND o.batch_id <> i.batch_id AND o.effect IN ${LEAVES}) o ON true
    WHERE i.programme_id = $1 AND i.batch_id = b.id AND i.effect IN ${ARRIVES} GROUP BY o.batch_id) x)`;
