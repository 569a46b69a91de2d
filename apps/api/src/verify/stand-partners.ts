/**
 * Partners on whose land the donor trees of each batch stand: of its sticking, or of
 * what a mixed batch was made of, however often it was mixed and split.
 */
export const STAND_PARTNERS = `
WITH RECURSIVE origin AS (
  SELECT id AS batch_id, id AS origin_id FROM batch WHERE programme_id = $1
  UNION
  SELECT o.batch_id, up.id FROM origin o
  JOIN batch b ON b.programme_id = $1 AND b.id = o.origin_id AND b.sticking_id IS NULL
  JOIN LATERAL (
    SELECT b.parent_id AS id UNION SELECT m.from_batch_id FROM mixed_part m WHERE m.programme_id = $1 AND m.batch_id = b.id) up ON up.id IS NOT NULL
), tree AS (
  SELECT s.id AS sticking_id, s.donor_tree_id FROM sticking s WHERE s.programme_id = $1
  UNION ALL
  SELECT c.sticking_id, c.donor_tree_id FROM sticking_candidate c JOIN sticking s ON s.programme_id = $1 AND s.id = c.sticking_id AND s.donor_tree_id IS NULL
  WHERE c.programme_id = $1
)
SELECT DISTINCT o.batch_id, st.partner_id, 'stand' AS relation
FROM origin o JOIN batch b ON b.programme_id = $1 AND b.id = o.origin_id JOIN tree ON tree.sticking_id = b.sticking_id
JOIN donor_tree d ON d.programme_id = $1 AND d.id = tree.donor_tree_id
JOIN stand st ON st.programme_id = $1 AND st.id = d.stand_id AND st.partner_id IS NOT NULL`;
