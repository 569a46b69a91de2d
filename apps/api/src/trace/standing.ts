/**
 * Where places are: a CTE `whereabouts (id, name, path, partner_id, partner)` over the ids that `of`
 * answers. The path goes from the outermost place inward; the partner is that of the nearest place that has one.
 */
export const WHEREABOUTS = (of: string): string => `
  above AS (
    SELECT p.id AS at_id, p.id, p.parent_id, p.name::text AS name, p.partner_id, 0 AS up
    FROM (${of}) here JOIN place p ON p.programme_id = $1 AND p.id = here.id
    UNION ALL
    SELECT a.at_id, p.id, p.parent_id, p.name::text, p.partner_id, a.up + 1 FROM above a JOIN place p ON p.programme_id = $1 AND p.id = a.parent_id),
  whereabouts AS MATERIALIZED (
    SELECT a.at_id AS id, min(a.name) FILTER (WHERE a.up = 0) AS name, array_agg(a.name ORDER BY a.up DESC) AS path,
      (SELECT json_build_object('id', r.id, 'name', r.name) FROM partner r WHERE r.programme_id = $1
        AND r.id = (array_agg(a.partner_id ORDER BY a.up) FILTER (WHERE a.partner_id IS NOT NULL))[1]) AS holder
    FROM above a GROUP BY a.at_id)`;
