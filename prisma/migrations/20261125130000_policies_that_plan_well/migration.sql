-- The same rule in words that the planner can weigh.
--
-- It takes `(SELECT this_partner()) IS NULL` to hold for one row in two hundred, since it
-- knows nothing of the value, and so expects a few hundred rows of a table of fifty thousand:
-- readings over a whole programme were planned as loops and took half a minute. The question
-- asked wholly inside the sub-select is answered once, and taken to be as likely as not.
--
-- Locks: brief, on each table. Undo by hand: ALTER POLICY back to `(SELECT this_partner()) IS NULL`.

CREATE OR REPLACE PROCEDURE hide_from_partners(guarded regclass) LANGUAGE plpgsql AS $$
BEGIN
  EXECUTE format('CREATE POLICY hidden_from_partners ON %s AS RESTRICTIVE TO sprigline_app USING ((SELECT this_partner() IS NULL))', guarded);
END
$$;

DO $$
DECLARE
  hidden regclass;
BEGIN
  FOR hidden IN SELECT polrelid::regclass FROM pg_policy WHERE polname = 'hidden_from_partners' LOOP
    EXECUTE format('ALTER POLICY hidden_from_partners ON %s USING ((SELECT this_partner() IS NULL))', hidden);
  END LOOP;
END
$$;

ALTER POLICY partners_see_their_own ON batch_partner
  USING ((SELECT this_partner() IS NULL) OR partner_id = (SELECT this_partner()));
ALTER POLICY partners_see_their_own ON batch
  USING ((SELECT this_partner() IS NULL) OR EXISTS (
    SELECT FROM batch_partner p WHERE p.programme_id = batch.programme_id AND p.batch_id = batch.id AND p.partner_id = (SELECT this_partner())));
ALTER POLICY partners_see_their_own ON batch_state
  USING ((SELECT this_partner() IS NULL) OR EXISTS (
    SELECT FROM batch_partner p WHERE p.programme_id = batch_state.programme_id AND p.batch_id = batch_state.batch_id AND p.partner_id = (SELECT this_partner())));
