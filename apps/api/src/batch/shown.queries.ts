/** Where a batch leads back to, past all that was mixed; `is_seen` is false where the caller may look no further. */
const ORIGINS = `
  WITH RECURSIVE origin AS (
    SELECT b.id, b.parent_id, b.sticking_id, true AS is_seen
    UNION
    SELECT up.id, o.parent_id, o.sticking_id, o.id IS NOT NULL FROM origin
    CROSS JOIN LATERAL (SELECT origin.parent_id AS id UNION SELECT m.from_batch_id FROM mixed_part m WHERE m.programme_id = b.programme_id AND m.batch_id = origin.id) up
    LEFT JOIN batch o ON o.programme_id = b.programme_id AND o.id = up.id
    WHERE origin.sticking_id IS NULL AND up.id IS NOT NULL
  )`;

/** The one value that all of them have; nothing if one of them has none, or another. */
const oneOf = (id: string): string => `CASE WHEN count(DISTINCT ${id}) = 1 AND bool_and(${id} IS NOT NULL) THEN min(${id}::text)::uuid END`;

/** The species of a mixed batch, if all that it was made of is of one. A partner is told so much of theirs, and no more of it. */
const ONE_TAXON = `coalesce((${ORIGINS} SELECT ${oneOf('x.taxon_id')} FROM origin LEFT JOIN sticking x ON x.programme_id = b.programme_id AND x.id = origin.sticking_id
  WHERE origin.sticking_id IS NOT NULL OR NOT origin.is_seen), taxon_of_mixed(b.id))`;

/** The stand of plants whose donor tree nobody knows, if all that they may be of stand there. */
const ONE_STAND = `(${ORIGINS} SELECT ${oneOf('dx.stand_id')} FROM origin LEFT JOIN sticking x ON x.programme_id = b.programme_id AND x.id = origin.sticking_id
  LEFT JOIN sticking_candidate c ON c.programme_id = b.programme_id AND c.sticking_id = x.id AND x.donor_tree_id IS NULL
  LEFT JOIN donor_tree dx ON dx.programme_id = b.programme_id AND dx.id = coalesce(x.donor_tree_id, c.donor_tree_id)
  WHERE origin.sticking_id IS NOT NULL OR NOT origin.is_seen)`;

/** The stand of `b`, of its donor tree or of all that it may be of, as one JSON value. Needs the joins below. */
export const STAND_SHOWN = `CASE WHEN st.id IS NOT NULL THEN json_build_object('id', st.id, 'name', st.name) WHEN k.donor_tree_id IS NULL THEN (
  SELECT json_build_object('id', sx.id, 'name', sx.name) FROM stand sx WHERE sx.programme_id = b.programme_id AND sx.id = ${ONE_STAND}) END`;

/**
 * What a batch in a list is made of, as SQL: the columns for `b` and `s`, and the joins
 * that they need. Outer joins, since a partner may see the batch and not the rest.
 */
export const SHOWN = `
  b.id, b.stage, b.rows, b.opened_on AS "openedOn", b.sticking_id IS NULL AS "isMixed",
  (SELECT l.code FROM label l WHERE l.programme_id = b.programme_id AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label,
  CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END AS "donorTree",
  ${STAND_SHOWN} AS stand,
  CASE WHEN t.id IS NOT NULL THEN json_build_object('id', t.id, 'name', t.scientific_name) WHEN b.sticking_id IS NULL THEN (
    SELECT json_build_object('id', tx.id, 'name', tx.scientific_name) FROM taxon tx WHERE tx.programme_id = b.programme_id AND tx.id = ${ONE_TAXON}) END AS taxon,
  CASE WHEN p.id IS NOT NULL THEN json_build_object('id', p.id, 'name', p.name) END AS place,
  k.stuck_on AS "stuckOn", s.balance, s.rooted_now AS "rootedNow", s.last_seen_on AS "lastSeenOn", s.last_look AS "lastLook",
  s.not_found AS "notFound", s.held, s.unconfirmed, s.called_on AS "calledOn",
  ARRAY(SELECT r.relation FROM batch_partner r WHERE r.programme_id = b.programme_id AND r.batch_id = b.id AND r.partner_id = (SELECT this_partner()) ORDER BY 1) AS relations`;

export const SHOWN_FROM = `
  batch b JOIN batch_state s ON s.programme_id = b.programme_id AND s.batch_id = b.id
  LEFT JOIN sticking k ON k.programme_id = b.programme_id AND k.id = b.sticking_id
  LEFT JOIN donor_tree d ON d.programme_id = b.programme_id AND d.id = k.donor_tree_id
  LEFT JOIN stand st ON st.programme_id = b.programme_id AND st.id = d.stand_id
  LEFT JOIN taxon t ON t.programme_id = b.programme_id AND t.id = k.taxon_id
  LEFT JOIN place p ON p.programme_id = b.programme_id AND p.id = s.place_id`;

/** A batch as a link of a family line, as one JSON value. Needs the same joins. */
export const IN_LINE = `json_build_object(
  'id', b.id, 'label', (SELECT l.code FROM label l WHERE l.programme_id = b.programme_id AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1),
  'stage', b.stage, 'openedOn', b.opened_on, 'balance', s.balance,
  'place', CASE WHEN p.id IS NOT NULL THEN json_build_object('id', p.id, 'name', p.name) END)`;

export const IN_LINE_FROM = `
  batch b JOIN batch_state s ON s.programme_id = b.programme_id AND s.batch_id = b.id
  LEFT JOIN place p ON p.programme_id = b.programme_id AND p.id = s.place_id`;
