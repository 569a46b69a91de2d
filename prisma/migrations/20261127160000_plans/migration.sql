-- Plans of a season: so many plants of so many donor trees of a stand, what to stick for it as it
-- was worked out on a day, and links by which people outside may look at it.
--
-- What was worked out stays beside its targets, so that a printed plan and the page say the same.
--
-- Locks: new tables only. Undo by hand: drop living_plan_share, plan_share, plan_target, plan.

CREATE TABLE plan (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  name         text           NOT NULL,
  -- Year in which the season begins.
  season       smallint       NOT NULL,
  note         text,
  made_by      uuid           NOT NULL,
  made_at      timestamptz(3) NOT NULL DEFAULT present_time(),
  CONSTRAINT plan_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT plan_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT plan_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);
CREATE INDEX plan_newest_first ON plan (programme_id, season DESC, made_at DESC, id DESC);

CREATE TABLE plan_target (
  programme_id            uuid           NOT NULL,
  id                      uuid           NOT NULL,
  plan_id                 uuid           NOT NULL,
  stand_id                uuid           NOT NULL,
  taxon_id                uuid           NOT NULL,
  site_id                 uuid,
  stage                   stage          NOT NULL,
  plants                  integer        NOT NULL,
  donors                  integer        NOT NULL,
  confidence              numeric(3,2)   NOT NULL,
  most_trees              smallint,
  stick_on                date,
  recipe_version_id       uuid,
  other_recipe_version_id uuid,
  length_cm               numeric(4,1),
  wood                    text,
  light_hours             numeric(4,2),
  places_per_donor        smallint,
  -- What to stick, and the day whose figures it was worked out from.
  answer                  jsonb          NOT NULL,
  figures_on              date           NOT NULL,
  written_at              timestamptz(3) NOT NULL DEFAULT present_time(),
  CONSTRAINT plan_target_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT plan_target_is_of_a_plan FOREIGN KEY (programme_id, plan_id) REFERENCES plan (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT plan_target_is_of_a_stand FOREIGN KEY (programme_id, stand_id) REFERENCES stand (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT plan_target_is_of_a_taxon FOREIGN KEY (programme_id, taxon_id) REFERENCES taxon (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT plan_target_is_for_a_site FOREIGN KEY (programme_id, site_id) REFERENCES site (programme_id, place_id) ON DELETE RESTRICT,
  CONSTRAINT plan_target_names_a_recipe FOREIGN KEY (programme_id, recipe_version_id) REFERENCES recipe_version (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT plan_target_compares_with_a_recipe FOREIGN KEY (programme_id, other_recipe_version_id) REFERENCES recipe_version (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT plan_target_compares_two_recipes CHECK (other_recipe_version_id IS NULL OR (recipe_version_id IS NOT NULL AND other_recipe_version_id <> recipe_version_id)),
  CONSTRAINT plan_target_is_beyond_cuttings CHECK (stage <> 'cutting'),
  CONSTRAINT plan_target_wants_plants CHECK (plants > 0 AND donors > 0),
  CONSTRAINT plan_target_is_sure_in_part CHECK (confidence > 0 AND confidence < 1),
  CONSTRAINT plan_target_wood_is_known CHECK (wood IN ('softwood', 'semiHardwood', 'hardwood'))
);
CREATE INDEX plan_target_by_plan ON plan_target (programme_id, plan_id, written_at, id);
CREATE INDEX plan_target_by_stand ON plan_target (programme_id, stand_id, taxon_id, written_at DESC);

CREATE TABLE plan_share (
  programme_id uuid           NOT NULL,
  id           uuid           NOT NULL,
  plan_id      uuid           NOT NULL,
  -- Nobody can tell the token from it.
  token_hash   bytea          NOT NULL,
  for_name     text           NOT NULL,
  made_by      uuid           NOT NULL,
  made_at      timestamptz(3) NOT NULL DEFAULT now(),
  expires_at   timestamptz(3) NOT NULL,
  revoked_at   timestamptz(3),
  CONSTRAINT plan_share_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT plan_share_token_is_used_once UNIQUE (token_hash),
  CONSTRAINT plan_share_is_of_a_plan FOREIGN KEY (programme_id, plan_id) REFERENCES plan (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT plan_share_is_made_by_a_person FOREIGN KEY (programme_id, made_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);
CREATE INDEX plan_share_by_plan ON plan_share (programme_id, plan_id);

CALL guard_rows_of('plan', 'SELECT, INSERT, UPDATE');
CALL guard_rows_of('plan_target');
CALL guard_rows_of('plan_share', 'SELECT, INSERT, UPDATE');
CALL hide_from_partners('plan');
CALL hide_from_partners('plan_target');
CALL hide_from_partners('plan_share');

-- A link that still opens: not revoked or expired, and made by somebody who may still make it.
CREATE FUNCTION living_plan_share(hash bytea) RETURNS TABLE (programme_id uuid, id uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp
BEGIN ATOMIC
  SELECT s.programme_id, s.id FROM public.plan_share s
  JOIN public.person maker ON maker.programme_id = s.programme_id AND maker.id = s.made_by
  WHERE s.token_hash = hash AND s.revoked_at IS NULL AND s.expires_at > now()
    AND maker.left_at IS NULL AND maker.role IN ('owner', 'coordinator');
END;
REVOKE ALL ON FUNCTION living_plan_share(bytea) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION living_plan_share(bytea) TO sprigline_app;
