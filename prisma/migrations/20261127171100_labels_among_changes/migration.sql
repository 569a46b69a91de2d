-- A label that somebody puts on a batch, a donor tree or a place is told in the feed of changes.
-- Those of donor trees and places are told as every change of theirs; batches are new here.
--
-- Locks: none. Undo by hand: make both functions anew as 20261127140000 has them.

-- What became of records, from one place in the feed to another. A part of a record is told as the
-- record that shows it. Notes of trips are for those with a right to exact places, and not told.
CREATE OR REPLACE FUNCTION record_changes(first_place bigint, up_to bigint)
RETURNS TABLE (place bigint, kind text, id uuid, is_made boolean, at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER ROWS 200 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  WITH told AS MATERIALIZED (
    SELECT c.place, a.subject_kind AS kind, a.subject_id AS id, a.act, a.facts, a.at
    FROM public.change c JOIN public.audit a ON a.programme_id = c.programme_id AND a.id = c.id
    WHERE c.programme_id = public.this_programme() AND c.of = 'record' AND c.place BETWEEN first_place AND up_to
      AND a.subject_id IS NOT NULL AND a.act <> 'trip.note-written'
  )
  SELECT t.place, t.kind, t.id, t.act LIKE '%.made', t.at FROM told t
  WHERE t.kind IN ('taxon', 'stand', 'donor-tree', 'trip', 'recipe', 'place', 'site', 'workday', 'sticking', 'request', 'partner', 'person', 'programme', 'batch')
  UNION ALL
  SELECT t.place, 'donor-tree', (t.facts ->> 'otherTreeId')::uuid, false, t.at FROM told t WHERE t.act = 'donor-tree.clone-stated'
  UNION ALL
  SELECT t.place, 'trip', b.trip_id, false, t.at FROM told t JOIN public.bundle b ON t.kind = 'bundle' AND b.programme_id = public.this_programme() AND b.id = t.id
  UNION ALL
  SELECT t.place, 'recipe', v.recipe_id, false, t.at FROM told t JOIN public.recipe_version v ON t.kind = 'recipe-version' AND v.programme_id = public.this_programme() AND v.id = t.id
  UNION ALL
  SELECT t.place, 'place', f.place_id, false, t.at FROM told t JOIN public.tray_filling f ON t.kind = 'filling' AND f.programme_id = public.this_programme() AND f.id = t.id
  UNION ALL
  SELECT t.place, 'place', m.place_id, false, t.at FROM told t JOIN public.place_move m ON t.kind = 'place-move' AND m.programme_id = public.this_programme() AND m.id = t.id
  UNION ALL
  SELECT t.place, 'place', r.place_id, false, t.at FROM told t JOIN public.regime r ON t.kind = 'regime' AND r.programme_id = public.this_programme() AND r.id = t.id;
END;

-- What of it concerns a partner: batches, stands, donor trees, sites and species that are theirs now,
-- and nothing of who wrote what. Entries that change nothing of what they are shown are not told.
CREATE OR REPLACE FUNCTION changes_of_partner(first_place bigint, up_to bigint)
RETURNS TABLE (place bigint, kind text, id uuid, is_made boolean, at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER ROWS 200 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  WITH RECURSIVE told AS MATERIALIZED (
    SELECT r.* FROM public.record_changes(first_place, up_to) r WHERE public.this_partner() IS NOT NULL
  ), family AS (
    SELECT t.place, t.at, t.id FROM told t WHERE t.kind = 'sticking'
    UNION SELECT f.place, f.at, k.id FROM family f JOIN public.sticking k ON k.programme_id = public.this_programme() AND (k.second_try_of_id = f.id
      OR k.from_batch_id IN (SELECT b.id FROM public.batch b WHERE b.programme_id = public.this_programme() AND b.sticking_id = f.id))
  -- Each entry is asked which batches it says something of: a partner may have very many.
  ), touched AS MATERIALIZED (
    SELECT c.place, t.batch_id, e.received_at
    FROM public.change c JOIN public.entry e ON e.programme_id = c.programme_id AND e.id = c.id
    CROSS JOIN LATERAL (SELECT o.batch_id FROM public.entry_touch o WHERE o.programme_id = c.programme_id AND o.entry_id = coalesce(e.corrects_id, e.id) OFFSET 0) t
    WHERE c.programme_id = public.this_programme() AND c.of = 'entry' AND c.place BETWEEN first_place AND up_to AND public.this_partner() IS NOT NULL
      AND e.kind NOT IN ('noted', 'treated', 'incident')
  ), own_batch AS (
    SELECT b.id, b.sticking_id, s.place_id FROM public.batch b
    JOIN public.batch_state s ON s.programme_id = b.programme_id AND s.batch_id = b.id
    WHERE b.programme_id = public.this_programme() AND b.id IN (SELECT public.batches_of_partner())
  ), own_site AS (
    SELECT p.id FROM public.place p WHERE p.programme_id = public.this_programme() AND p.kind = 'site' AND p.id IN (SELECT public.places_of_partner())
  )
  SELECT c.place, 'batch', c.batch_id, false, c.received_at FROM touched c WHERE c.batch_id IN (SELECT public.batches_of_partner())
  UNION
  -- A label was put on it.
  SELECT t.place, 'batch', t.id, false, t.at FROM told t WHERE t.kind = 'batch' AND t.id IN (SELECT public.batches_of_partner())
  UNION
  -- Who found out of which tree they are changes the line of a batch.
  SELECT f.place, 'batch', b.id, false, f.at FROM family f JOIN own_batch b ON b.sticking_id = f.id
  UNION
  -- What stands in a place that moved, or has another name.
  SELECT t.place, 'batch', b.id, false, t.at FROM told t JOIN own_batch b ON b.place_id = t.id WHERE t.kind IN ('place', 'site') AND NOT t.is_made
  UNION
  -- A plot is told as its site.
  SELECT t.place, 'site', s.id, t.is_made AND s.id = t.id, t.at FROM told t
  LEFT JOIN public.place p ON p.programme_id = public.this_programme() AND p.id = t.id JOIN own_site s ON s.id IN (t.id, p.parent_id)
  WHERE t.kind IN ('place', 'site')
  UNION
  SELECT t.* FROM told t WHERE (t.kind = 'stand' AND t.id IN (SELECT public.stands_of_partner()))
    OR (t.kind = 'taxon' AND t.id IN (SELECT public.taxa_of_partner()))
    OR (t.kind = 'donor-tree' AND t.id IN (
      SELECT d.id FROM public.donor_tree d WHERE d.programme_id = public.this_programme() AND d.stand_id IN (SELECT public.stands_of_partner())));
END;
