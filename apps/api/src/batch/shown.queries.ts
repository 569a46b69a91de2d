/**
 * What a batch in a list is made of, as SQL: the columns for `b` and `s`, and the joins
 * that they need. Outer joins, since a partner may see the batch and not the rest.
 */
export const SHOWN = `
  b.id, b.stage, b.rows, b.opened_on AS "openedOn", b.sticking_id IS NULL AS "isMixed",
  (SELECT l.code FROM label l WHERE l.programme_id = b.programme_id AND l.batch_id = b.id ORDER BY l.given_at DESC, l.code LIMIT 1) AS label,
  CASE WHEN d.id IS NOT NULL THEN json_build_object('id', d.id, 'label', d.label) END AS "donorTree",
  CASE WHEN st.id IS NOT NULL THEN json_build_object('id', st.id, 'name', st.name) END AS stand,
  CASE WHEN t.id IS NOT NULL THEN json_build_object('id', t.id, 'name', t.scientific_name) END AS taxon,
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
