-- The feed of a partner went through all of their batches for each entry; now each entry is asked which
-- batches it says something of, and those are looked up among theirs. Answers the same.
--
-- Locks: none. Undo by hand: create the function as 20261127140000_changes does.

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
