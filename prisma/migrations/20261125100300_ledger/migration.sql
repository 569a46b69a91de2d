-- The ledger: every entry as it was written, and the identities that entries open.
-- Nothing here is ever changed or deleted; a wrong entry is answered by another
-- one (withdrawn, replaced). What follows from entries is in the projections.
--
-- Locks: new tables only. Undo by hand: drop the tables below.

CREATE TYPE stage AS ENUM ('cutting', 'liner', 'potted', 'planted');
CREATE TYPE look AS ENUM ('look', 'tug', 'lifted');

CREATE TABLE entry (
  programme_id      uuid           NOT NULL,
  -- Made by the caller: sending an entry twice records it once.
  id                uuid           NOT NULL,
  kind              text           NOT NULL,
  -- The day it was seen or done, in the programme's zone, as the caller told it. Never recomputed.
  observed_on       date           NOT NULL,
  observed_minute   smallint,
  -- What it says, by kind: the shapes of packages/contract/src/entry.ts.
  body              jsonb          NOT NULL,
  -- For withdrawn and replaced: the entry meant, and the version of it that was seen.
  corrects_id       uuid,
  saw_version_id    uuid,
  -- Things other than batches that an entry may be about.
  place_id          uuid,
  donor_tree_id     uuid,
  trip_id           uuid,
  workday_id        uuid,
  line              integer,
  note              text,
  seen_by           uuid,
  written_by        uuid,
  -- The session or key that brought it.
  delivered_by      words          NOT NULL,
  door              text           NOT NULL,
  written_at        timestamptz(3) NOT NULL,
  received_at       timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  received_on       date           NOT NULL,
  clock_offset_s    integer,
  clock_unsure      boolean        NOT NULL DEFAULT false,
  author_unverified boolean        NOT NULL DEFAULT false,
  -- For a change feed that no late commit can slip behind.
  recorded_in       xid8           NOT NULL DEFAULT pg_current_xact_id(),

  CONSTRAINT entry_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT entry_belongs_to_a_programme FOREIGN KEY (programme_id) REFERENCES programme (id) ON DELETE RESTRICT,
  CONSTRAINT entry_is_about_a_place FOREIGN KEY (programme_id, place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT entry_is_about_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT entry_is_about_a_trip FOREIGN KEY (programme_id, trip_id) REFERENCES trip (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT entry_hangs_on_a_workday FOREIGN KEY (programme_id, workday_id) REFERENCES workday (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT entry_was_seen_by_a_person FOREIGN KEY (programme_id, seen_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT entry_was_written_by_a_person FOREIGN KEY (programme_id, written_by) REFERENCES person (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT entry_kind_is_known CHECK (kind IN (
    'stuck', 'received', 'counted', 'died', 'thrownOut', 'called', 'lifted', 'potted', 'planted', 'moved', 'restuck',
    'givenOut', 'found', 'mixed', 'identified', 'checked', 'held', 'released', 'treated', 'incident', 'noted',
    'withdrawn', 'replaced')),
  CONSTRAINT entry_door_is_known CHECK (door IN ('desk', 'outbox', 'import', 'api')),
  CONSTRAINT entry_minute_is_of_a_day CHECK (observed_minute BETWEEN 0 AND 1439),
  CONSTRAINT entry_line_is_counted_from_one CHECK (line >= 1),
  CONSTRAINT entry_tells_no_negative_plants CHECK (coalesce((body ->> 'n')::int, 0) >= 0 AND coalesce((body ->> 'alive')::int, 0) >= 0),
  CONSTRAINT entry_corrects_by_naming_what_it_saw CHECK ((kind IN ('withdrawn', 'replaced')) = (corrects_id IS NOT NULL) AND (corrects_id IS NULL) = (saw_version_id IS NULL)),
  CONSTRAINT entry_does_not_correct_itself CHECK (corrects_id <> id)
);
CREATE INDEX entry_by_day ON entry (programme_id, observed_on);
CREATE INDEX entry_by_what_it_corrects ON entry (programme_id, corrects_id) WHERE corrects_id IS NOT NULL;
CREATE INDEX entry_by_receipt ON entry (programme_id, received_at);
CREATE INDEX entry_by_place ON entry (programme_id, place_id) WHERE place_id IS NOT NULL;
CREATE INDEX entry_by_donor_tree ON entry (programme_id, donor_tree_id) WHERE donor_tree_id IS NOT NULL;

-- One bundle's cuttings put into medium on one day under one recipe: the cohort that statistics count.
-- Its identity survives the withdrawal of the entry that opened it.
CREATE TABLE sticking (
  programme_id      uuid     NOT NULL,
  id                uuid     NOT NULL,
  opening_entry_id  uuid     NOT NULL,
  -- As determined last; empty while the donor tree is unknown.
  donor_tree_id     uuid,
  taxon_id          uuid     NOT NULL,
  bundle_id         uuid,
  recipe_version_id uuid,
  -- A nursery plant of that donor tree from which these were cut.
  from_batch_id     uuid,
  second_try_of_id  uuid,
  generation        smallint NOT NULL DEFAULT 1,
  stuck_on          date,
  CONSTRAINT sticking_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT sticking_is_opened_by_an_entry FOREIGN KEY (programme_id, opening_entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT sticking_is_of_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT sticking_is_of_a_taxon FOREIGN KEY (programme_id, taxon_id) REFERENCES taxon (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT sticking_is_from_a_bundle FOREIGN KEY (programme_id, bundle_id) REFERENCES bundle (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT sticking_is_under_a_recipe FOREIGN KEY (programme_id, recipe_version_id) REFERENCES recipe_version (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT sticking_is_a_second_try_of_one FOREIGN KEY (programme_id, second_try_of_id) REFERENCES sticking (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT sticking_generation_is_counted_from_one CHECK (generation >= 1)
);
CREATE INDEX sticking_by_donor_tree ON sticking (programme_id, donor_tree_id);
CREATE INDEX sticking_by_bundle ON sticking (programme_id, bundle_id) WHERE bundle_id IS NOT NULL;

-- Donor trees that a sticking may be of, while it is not known which.
CREATE TABLE sticking_candidate (
  programme_id  uuid NOT NULL,
  sticking_id   uuid NOT NULL,
  donor_tree_id uuid NOT NULL,
  CONSTRAINT sticking_candidate_pkey PRIMARY KEY (programme_id, sticking_id, donor_tree_id),
  CONSTRAINT sticking_candidate_is_of_a_sticking FOREIGN KEY (programme_id, sticking_id) REFERENCES sticking (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT sticking_candidate_is_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT
);

-- Who said, on what evidence, from which donor tree a sticking is. The last one holds.
CREATE TABLE determination (
  programme_id  uuid           NOT NULL,
  id            uuid           NOT NULL,
  sticking_id   uuid           NOT NULL,
  donor_tree_id uuid,
  determined_on date           NOT NULL,
  by_person_id  uuid,
  evidence      words          NOT NULL,
  written_at    timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT determination_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT determination_is_of_a_sticking FOREIGN KEY (programme_id, sticking_id) REFERENCES sticking (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT determination_names_a_donor_tree FOREIGN KEY (programme_id, donor_tree_id) REFERENCES donor_tree (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT determination_is_by_a_person FOREIGN KEY (programme_id, by_person_id) REFERENCES person (programme_id, id) ON DELETE RESTRICT
);

-- Plants of one sticking at one stage in one place.
CREATE TABLE batch (
  programme_id     uuid  NOT NULL,
  id               uuid  NOT NULL,
  -- Empty for a mixed batch.
  sticking_id      uuid,
  stage            stage NOT NULL,
  parent_id        uuid,
  opening_entry_id uuid  NOT NULL,
  opening_place_id uuid  NOT NULL,
  opened_on        date  NOT NULL,
  -- Rows of a tray, as "3" or "3-5".
  rows             text,
  container        text,
  medium           text,
  CONSTRAINT batch_pkey PRIMARY KEY (programme_id, id),
  CONSTRAINT batch_is_of_a_sticking FOREIGN KEY (programme_id, sticking_id) REFERENCES sticking (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_comes_from_a_batch FOREIGN KEY (programme_id, parent_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_is_opened_by_an_entry FOREIGN KEY (programme_id, opening_entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_is_opened_at_a_place FOREIGN KEY (programme_id, opening_place_id) REFERENCES place (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT batch_is_not_its_own_parent CHECK (parent_id <> id)
);
CREATE INDEX batch_by_sticking ON batch (programme_id, sticking_id);
CREATE INDEX batch_by_parent ON batch (programme_id, parent_id) WHERE parent_id IS NOT NULL;
ALTER TABLE sticking ADD CONSTRAINT sticking_is_cut_from_a_batch FOREIGN KEY (programme_id, from_batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT;

-- What went into a mixed batch.
CREATE TABLE mixed_part (
  programme_id  uuid    NOT NULL,
  batch_id      uuid    NOT NULL,
  from_batch_id uuid    NOT NULL,
  n             integer NOT NULL,
  CONSTRAINT mixed_part_pkey PRIMARY KEY (programme_id, batch_id, from_batch_id),
  CONSTRAINT mixed_part_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT mixed_part_comes_from_a_batch FOREIGN KEY (programme_id, from_batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT mixed_part_has_plants CHECK (n > 0)
);

-- A code once given is never given again, not even after the batch has gone.
CREATE TABLE label (
  programme_id uuid           NOT NULL,
  code         words          NOT NULL,
  batch_id     uuid           NOT NULL,
  given_at     timestamptz(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  CONSTRAINT label_code_is_never_used_again PRIMARY KEY (programme_id, code),
  CONSTRAINT label_is_on_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT
);
CREATE INDEX label_by_batch ON label (programme_id, batch_id);

-- Which batches an entry says something of, in any of its versions.
CREATE TABLE entry_touch (
  programme_id uuid NOT NULL,
  batch_id     uuid NOT NULL,
  entry_id     uuid NOT NULL,
  CONSTRAINT entry_touch_pkey PRIMARY KEY (programme_id, batch_id, entry_id),
  CONSTRAINT entry_touch_is_by_an_entry FOREIGN KEY (programme_id, entry_id) REFERENCES entry (programme_id, id) ON DELETE RESTRICT,
  CONSTRAINT entry_touch_is_of_a_batch FOREIGN KEY (programme_id, batch_id) REFERENCES batch (programme_id, id) ON DELETE RESTRICT
);
CREATE INDEX entry_touch_by_entry ON entry_touch (programme_id, entry_id);

-- Rows are only added. The application has no code that changes one; this makes
-- the promise hold for the console, and for next year's code, as well.
CREATE FUNCTION refuse_to_rewrite_what_was_written() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% rows are never changed: write a correction instead', TG_TABLE_NAME
    USING ERRCODE = 'restrict_violation', CONSTRAINT = TG_NAME;
END
$$;
CREATE TRIGGER entry_is_never_rewritten BEFORE UPDATE OR DELETE ON entry FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER entry_is_never_emptied BEFORE TRUNCATE ON entry FOR EACH STATEMENT EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER label_is_never_rewritten BEFORE UPDATE OR DELETE ON label FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER batch_is_never_rewritten BEFORE UPDATE OR DELETE ON batch FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER audit_is_never_rewritten BEFORE UPDATE OR DELETE ON audit FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER determination_is_never_rewritten BEFORE UPDATE OR DELETE ON determination FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
CREATE TRIGGER recipe_version_is_never_rewritten BEFORE UPDATE OR DELETE ON recipe_version FOR EACH ROW EXECUTE FUNCTION refuse_to_rewrite_what_was_written();
