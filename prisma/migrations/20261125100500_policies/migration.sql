-- Who may touch which row. The application's login owns nothing and is under
-- forced row-level security; the owner migrates; the keeper backs up and verifies.
--
-- Locks: brief, on each table. Undo by hand: drop the policies and revoke.

-- The programme of this transaction; none set means no rows, never an error.
CREATE FUNCTION this_programme() RETURNS uuid LANGUAGE sql STABLE
  RETURN nullif(current_setting('app.programme_id', true), '')::uuid;
CREATE FUNCTION this_person() RETURNS uuid LANGUAGE sql STABLE
  RETURN nullif(current_setting('app.person_id', true), '')::uuid;
CREATE FUNCTION this_partner() RETURNS uuid LANGUAGE sql STABLE
  RETURN nullif(current_setting('app.partner_id', true), '')::uuid;
CREATE FUNCTION sees_exact_places() RETURNS boolean LANGUAGE sql STABLE
  RETURN coalesce(current_setting('app.sees_exact', true), '') = 'yes';

-- Puts a table of a tenant under the policies. Each later migration calls it for its new tables.
CREATE PROCEDURE guard_rows_of(guarded regclass, rights text DEFAULT 'SELECT, INSERT, UPDATE, DELETE') LANGUAGE plpgsql AS $$
BEGIN
  EXECUTE format('ALTER TABLE %s ENABLE ROW LEVEL SECURITY', guarded);
  EXECUTE format('ALTER TABLE %s FORCE ROW LEVEL SECURITY', guarded);
  EXECUTE format('CREATE POLICY rows_of_this_programme ON %s TO sprigline_app USING (programme_id = (SELECT this_programme())) WITH CHECK (programme_id = (SELECT this_programme()))', guarded);
  EXECUTE format('CREATE POLICY owner_sees_all ON %s TO sprigline_owner USING (true) WITH CHECK (true)', guarded);
  EXECUTE format('GRANT %s ON %s TO sprigline_app', rights, guarded);
  EXECUTE format('GRANT SELECT ON %s TO sprigline_keeper', guarded);
END
$$;

-- People of a partner see nothing unless a table says otherwise.
CREATE PROCEDURE hide_from_partners(guarded regclass) LANGUAGE plpgsql AS $$
BEGIN
  EXECUTE format('CREATE POLICY hidden_from_partners ON %s AS RESTRICTIVE TO sprigline_app USING ((SELECT this_partner()) IS NULL)', guarded);
END
$$;

-- Open only to the grant *see exact places*.
CREATE PROCEDURE hide_without_the_grant(guarded regclass) LANGUAGE plpgsql AS $$
BEGIN
  EXECUTE format('CREATE POLICY hidden_without_the_grant ON %s AS RESTRICTIVE TO sprigline_app USING ((SELECT sees_exact_places()))', guarded);
END
$$;

DO $$
DECLARE
  added_only text[] := ARRAY['entry', 'label', 'audit', 'determination', 'recipe_version', 'batch', 'review', 'mixed_part'];
  open_to_partners text[] := ARRAY['batch', 'batch_state', 'batch_partner'];
  name text;
BEGIN
  FOR name IN
    SELECT c.table_name FROM information_schema.columns c JOIN information_schema.tables t USING (table_schema, table_name)
    WHERE c.table_schema = 'public' AND c.column_name = 'programme_id' AND t.table_type = 'BASE TABLE' ORDER BY 1
  LOOP
    CALL guard_rows_of(name::regclass, CASE WHEN name = ANY (added_only) THEN 'SELECT, INSERT' ELSE 'SELECT, INSERT, UPDATE, DELETE' END);
    IF name <> ALL (open_to_partners) THEN CALL hide_from_partners(name::regclass); END IF;
  END LOOP;
END
$$;

CALL hide_without_the_grant('exact_place');
CALL hide_without_the_grant('trip_note');
CALL hide_without_the_grant('permission');

CREATE POLICY partners_see_their_own ON batch_partner AS RESTRICTIVE TO sprigline_app
  USING ((SELECT this_partner()) IS NULL OR partner_id = (SELECT this_partner()));
CREATE POLICY partners_see_their_own ON batch AS RESTRICTIVE TO sprigline_app
  USING ((SELECT this_partner()) IS NULL OR EXISTS (
    SELECT FROM batch_partner p WHERE p.programme_id = batch.programme_id AND p.batch_id = batch.id AND p.partner_id = (SELECT this_partner())));
CREATE POLICY partners_see_their_own ON batch_state AS RESTRICTIVE TO sprigline_app
  USING ((SELECT this_partner()) IS NULL OR EXISTS (
    SELECT FROM batch_partner p WHERE p.programme_id = batch_state.programme_id AND p.batch_id = batch_state.batch_id AND p.partner_id = (SELECT this_partner())));

-- A programme sees itself.
ALTER TABLE programme ENABLE ROW LEVEL SECURITY;
ALTER TABLE programme FORCE ROW LEVEL SECURITY;
CREATE POLICY only_this_programme ON programme TO sprigline_app USING (id = (SELECT this_programme())) WITH CHECK (id = (SELECT this_programme()));
CREATE POLICY owner_sees_all ON programme TO sprigline_owner USING (true) WITH CHECK (true);
GRANT SELECT, INSERT, UPDATE ON programme TO sprigline_app;
GRANT SELECT ON programme, setup_link TO sprigline_keeper;
GRANT USAGE ON SCHEMA public TO sprigline_app, sprigline_keeper, sprigline_auth;
