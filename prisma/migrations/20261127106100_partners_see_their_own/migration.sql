-- What a partner is shown: its stands and their donor trees, its sites and benches, and the
-- batches that concern it, with species, labels and numbers. Never people, notes of entries,
-- trips, permissions, recipes, or another partner's stand.
--
-- Whose a row is, is asked in functions that run with their owner's rights, each once a query:
-- a policy that asked other tables under policies would ask again and again.
--
-- Locks: brief, on each table. Undo by hand: drop the policies, call hide_from_partners for each
-- table, drop the functions.

CREATE FUNCTION batches_of_partner() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER ROWS 100 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT DISTINCT batch_id FROM public.batch_partner WHERE programme_id = public.this_programme() AND partner_id = public.this_partner();
END;

CREATE FUNCTION stands_of_partner() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER ROWS 10 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT id FROM public.stand WHERE programme_id = public.this_programme() AND partner_id = public.this_partner();
END;

-- Of its stands: donor known, or all that it may be stand there.
CREATE FUNCTION own_stickings_of_partner() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER ROWS 100 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT k.id FROM public.donor_tree d JOIN public.sticking k ON k.programme_id = d.programme_id AND k.donor_tree_id = d.id
  WHERE d.programme_id = public.this_programme() AND d.stand_id IN (SELECT public.stands_of_partner())
  UNION ALL
  SELECT c.sticking_id FROM public.sticking_candidate c
  JOIN public.sticking k ON k.programme_id = c.programme_id AND k.id = c.sticking_id AND k.donor_tree_id IS NULL
  JOIN public.donor_tree d ON d.programme_id = c.programme_id AND d.id = c.donor_tree_id
  WHERE c.programme_id = public.this_programme()
  GROUP BY c.sticking_id HAVING bool_and(d.stand_id IN (SELECT public.stands_of_partner()));
END;

-- Those, and the ones that batches at its sites and in its hands are of.
CREATE FUNCTION stickings_of_partner() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER ROWS 100 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT public.own_stickings_of_partner()
  UNION
  SELECT b.sticking_id FROM public.batch b
  WHERE b.programme_id = public.this_programme() AND b.sticking_id IS NOT NULL AND b.id IN (SELECT public.batches_of_partner());
END;

-- What it holds, and all that lies in it that nobody else holds.
CREATE FUNCTION places_of_partner() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER ROWS 20 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  WITH RECURSIVE held AS (
    SELECT id FROM public.place WHERE programme_id = public.this_programme() AND partner_id = public.this_partner()
    UNION
    SELECT p.id FROM held JOIN public.place p ON p.programme_id = public.this_programme() AND p.parent_id = held.id
    WHERE p.partner_id IS NULL OR p.partner_id = public.this_partner()
  ) SELECT id FROM held;
END;

-- The species of a mixed batch of a partner's, from what it was made of: nothing else of it is told.
CREATE FUNCTION taxon_of_mixed(mixed uuid) RETURNS uuid
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  WITH RECURSIVE origin AS (
    SELECT b.id, b.sticking_id, b.parent_id FROM public.batch b
    WHERE b.programme_id = public.this_programme() AND b.id = mixed AND mixed IN (SELECT public.batches_of_partner())
    UNION
    SELECT b.id, b.sticking_id, b.parent_id FROM origin o
    JOIN public.batch b ON b.programme_id = public.this_programme() AND o.sticking_id IS NULL
      AND (b.id = o.parent_id OR b.id IN (SELECT m.from_batch_id FROM public.mixed_part m WHERE m.programme_id = b.programme_id AND m.batch_id = o.id))
  )
  SELECT CASE WHEN count(DISTINCT k.taxon_id) = 1 THEN min(k.taxon_id::text)::uuid END FROM origin o JOIN public.sticking k ON k.programme_id = public.this_programme() AND k.id = o.sticking_id;
END;

CREATE FUNCTION taxa_of_partner() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER ROWS 10 SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT taxon_id FROM public.donor_tree WHERE programme_id = public.this_programme() AND stand_id IN (SELECT public.stands_of_partner())
  UNION
  SELECT taxon_id FROM public.sticking WHERE programme_id = public.this_programme() AND id IN (SELECT public.stickings_of_partner())
  UNION
  SELECT public.taxon_of_mixed(id) FROM public.batch
  WHERE programme_id = public.this_programme() AND sticking_id IS NULL AND id IN (SELECT public.batches_of_partner());
END;

-- Shows a partner the rows of a table that are theirs, and lets them write none.
CREATE PROCEDURE show_partners_their_own(guarded regclass, theirs text) LANGUAGE plpgsql AS $$
BEGIN
  EXECUTE format('DROP POLICY IF EXISTS hidden_from_partners ON %s', guarded);
  EXECUTE format('DROP POLICY IF EXISTS partners_see_their_own ON %s', guarded);
  EXECUTE format('CREATE POLICY partners_see_their_own ON %s AS RESTRICTIVE FOR SELECT TO sprigline_app USING ((SELECT this_partner() IS NULL) OR %s)', guarded, theirs);
  EXECUTE format('CREATE POLICY partners_add_nothing ON %s AS RESTRICTIVE FOR INSERT TO sprigline_app WITH CHECK ((SELECT this_partner() IS NULL))', guarded);
  EXECUTE format('CREATE POLICY partners_change_nothing ON %s AS RESTRICTIVE FOR UPDATE TO sprigline_app USING ((SELECT this_partner() IS NULL))', guarded);
  EXECUTE format('CREATE POLICY partners_remove_nothing ON %s AS RESTRICTIVE FOR DELETE TO sprigline_app USING ((SELECT this_partner() IS NULL))', guarded);
END
$$;

DO $$
DECLARE
  asked regprocedure;
BEGIN
  FOREACH asked IN ARRAY ARRAY['batches_of_partner()', 'stands_of_partner()', 'own_stickings_of_partner()', 'stickings_of_partner()',
    'places_of_partner()', 'taxa_of_partner()', 'taxon_of_mixed(uuid)']::regprocedure[]
  LOOP
    EXECUTE format('REVOKE ALL ON FUNCTION %s FROM PUBLIC', asked);
    EXECUTE format('GRANT EXECUTE ON FUNCTION %s TO sprigline_app', asked);
  END LOOP;
END
$$;

CALL show_partners_their_own('partner', 'id = (SELECT this_partner())');
CALL show_partners_their_own('batch_partner', 'partner_id = (SELECT this_partner())');
CALL show_partners_their_own('batch', 'id IN (SELECT batches_of_partner())');
CALL show_partners_their_own('batch_state', 'batch_id IN (SELECT batches_of_partner())');
CALL show_partners_their_own('label', 'batch_id IN (SELECT batches_of_partner())');
CALL show_partners_their_own('movement', 'batch_id IN (SELECT batches_of_partner())');
CALL show_partners_their_own('stand', 'partner_id = (SELECT this_partner())');
CALL show_partners_their_own('donor_tree', 'stand_id IN (SELECT stands_of_partner())');
CALL show_partners_their_own('sticking', 'id IN (SELECT stickings_of_partner())');
CALL show_partners_their_own('sticking_candidate', 'sticking_id IN (SELECT own_stickings_of_partner())');
CALL show_partners_their_own('tally', 'sticking_id IN (SELECT own_stickings_of_partner())');
CALL show_partners_their_own('mixed_part', 'batch_id IN (SELECT batches_of_partner())');
CALL show_partners_their_own('place', 'id IN (SELECT places_of_partner())');
CALL show_partners_their_own('site', 'place_id IN (SELECT places_of_partner())');
CALL show_partners_their_own('taxon', 'id IN (SELECT taxa_of_partner())');

-- On whose land the donor trees of each batch stand: of its sticking, or of what a mixed batch
-- was made of, however often it was mixed and split. With the caller's rights, like the two below.
CREATE FUNCTION stand_partners_of(of_programme uuid) RETURNS TABLE (batch_id uuid, partner_id uuid) LANGUAGE sql STABLE AS $$
  WITH RECURSIVE origin AS (
    SELECT id AS batch_id, id AS origin_id FROM batch WHERE programme_id = of_programme
    UNION
    SELECT o.batch_id, up.id FROM origin o
    JOIN batch b ON b.programme_id = of_programme AND b.id = o.origin_id AND b.sticking_id IS NULL
    JOIN LATERAL (
      SELECT b.parent_id AS id UNION SELECT m.from_batch_id FROM mixed_part m WHERE m.programme_id = of_programme AND m.batch_id = b.id) up ON up.id IS NOT NULL
  ), tree AS (
    SELECT s.id AS sticking_id, s.donor_tree_id FROM sticking s WHERE s.programme_id = of_programme
    UNION ALL
    SELECT c.sticking_id, c.donor_tree_id FROM sticking_candidate c
    JOIN sticking s ON s.programme_id = of_programme AND s.id = c.sticking_id AND s.donor_tree_id IS NULL
    WHERE c.programme_id = of_programme
  )
  SELECT DISTINCT o.batch_id, st.partner_id
  FROM origin o JOIN batch b ON b.programme_id = of_programme AND b.id = o.origin_id JOIN tree ON tree.sticking_id = b.sticking_id
  JOIN donor_tree d ON d.programme_id = of_programme AND d.id = tree.donor_tree_id
  JOIN stand st ON st.programme_id = of_programme AND st.id = d.stand_id AND st.partner_id IS NOT NULL
$$;

-- Which partners may see which batches, made true again after a stand got another partner.
CREATE FUNCTION file_stand_partners(of_programme uuid) RETURNS void LANGUAGE sql VOLATILE AS $$
  WITH right_now AS MATERIALIZED (SELECT * FROM stand_partners_of(of_programme)), gone AS (
    DELETE FROM batch_partner p WHERE p.programme_id = of_programme AND p.relation = 'stand'
      AND NOT EXISTS (SELECT FROM right_now r WHERE r.batch_id = p.batch_id AND r.partner_id = p.partner_id)
  )
  INSERT INTO batch_partner (programme_id, batch_id, partner_id, relation)
  SELECT of_programme, batch_id, partner_id, 'stand' FROM right_now ON CONFLICT DO NOTHING;
$$;

-- The same after a place, with all that lies in it, came into other hands. Whom plants were
-- given to they keep: only who holds the place where they stand is told anew.
CREATE FUNCTION file_holders(of_programme uuid, changed_place uuid) RETURNS void LANGUAGE sql VOLATILE AS $$
  WITH RECURSIVE within AS (
    SELECT changed_place AS id
    UNION SELECT p.id FROM within w JOIN place p ON p.programme_id = of_programme AND p.parent_id = w.id
  ), above AS (
    SELECT w.id AS at_id, p.id, p.parent_id, p.kind, p.partner_id FROM within w JOIN place p ON p.programme_id = of_programme AND p.id = w.id
    UNION ALL
    SELECT a.at_id, p.id, p.parent_id, p.kind, p.partner_id FROM above a
    JOIN place p ON p.programme_id = of_programme AND p.id = a.parent_id WHERE a.partner_id IS NULL
  ), there AS (
    SELECT s.batch_id, a.partner_id, CASE WHEN a.kind IN ('site', 'plot') THEN 'site' ELSE 'hands' END AS relation
    FROM batch_state s JOIN within w ON w.id = s.place_id
    LEFT JOIN above a ON a.at_id = s.place_id AND a.partner_id IS NOT NULL
    WHERE s.programme_id = of_programme
  ), given AS (
    SELECT DISTINCT m.batch_id, coalesce(c.body #>> '{instead,saying,partnerId}', e.body ->> 'partnerId')::uuid AS partner_id
    FROM there JOIN movement m ON m.programme_id = of_programme AND m.batch_id = there.batch_id AND m.effect = 'givenIn'
    JOIN entry e ON e.programme_id = of_programme AND e.id = m.entry_id
    LEFT JOIN entry c ON c.programme_id = of_programme AND c.corrects_id = e.id AND c.kind = 'replaced'
  ), gone AS (
    DELETE FROM batch_partner p USING there t
    WHERE p.programme_id = of_programme AND p.batch_id = t.batch_id AND p.relation IN ('site', 'hands')
      AND (p.partner_id, p.relation) IS DISTINCT FROM (t.partner_id, t.relation)
      AND NOT (p.relation = 'hands' AND EXISTS (SELECT FROM given g WHERE g.batch_id = p.batch_id AND g.partner_id = p.partner_id))
  )
  INSERT INTO batch_partner (programme_id, batch_id, partner_id, relation)
  SELECT of_programme, batch_id, partner_id, relation FROM there WHERE partner_id IS NOT NULL ON CONFLICT DO NOTHING;
$$;
